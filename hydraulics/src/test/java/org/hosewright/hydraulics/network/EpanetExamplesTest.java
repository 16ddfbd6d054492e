package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Three public example networks of water mains at their first time step, against the reference's answers.
 *
 * <p>Source of the networks: US Environmental Protection Agency, EPANET examples Net1, Net2 and Net3 (public domain).
 * Source of the answers: epanet-js 0.9.0 (engine 2.3.5) at accuracy 1e-8; bench/reference/example-answers.mjs.
 */
class EpanetExamplesTest {
    /** Every node's pressure [psi]; the reference lets half a thousandth of a gpm through a closed pump. */
    private static final double PRESSURE_psi = 5e-6;

    /** Every link's flow [gpm], against mains of thousands. */
    private static final double FLOW_gpm = 1e-3;

    @ParameterizedTest
    @ValueSource(strings = {"Net1", "Net2", "Net3"})
    @Tag("real-data")
    void firstTimeStepAgrees(String name) throws IOException {
        Path folder = Path.of(System.getProperty("hosewright.realData"), "epanet");
        Network network = InpNetwork.read(folder.resolve(name + ".inp"));
        NetworkState state = NetworkSolver.solve(network);
        List<String> links = network.listLinks();
        double off_psi = 0;
        double off_gpm = 0;
        int compared = 0;
        for (String line : EpanetCase.resource("epanet-examples.txt").lines().toList()) {
            String[] cells = line.split(" ", -1);
            if (!cells[0].equals(name)) {
                continue;
            }
            compared++;
            double theirs = Double.parseDouble(cells[3]);
            if (cells[1].equals("node")) {
                double apart_Pa = state.head_Pa(cells[2]) - EpanetUnits.head_Pa(theirs);
                off_psi = Math.max(off_psi, Math.abs(EpanetUnits.psi(apart_Pa)));
            } else {
                double ours = links.contains(cells[2]) ? EpanetUnits.gpm(state.flow_m3s(cells[2])) : 0;
                off_gpm = Math.max(off_gpm, Math.abs(ours - theirs));
            }
        }
        System.out.println(
                name + ": " + compared + " values, at most " + off_psi + " psi and " + off_gpm + " gpm apart");
        assertThat(compared).isGreaterThan(links.size());
        assertThat(off_psi).isLessThan(PRESSURE_psi);
        assertThat(off_gpm).isLessThan(FLOW_gpm);
    }
}
