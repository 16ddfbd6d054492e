package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Our network solve against a general hydraulic engine's, over seeded random networks of 2 to 200 nodes.
 *
 * <p>Source of the answers: epanet-js 0.9.0 (engine 2.3.5) at accuracy 1e-8; bench/reference makes them.
 */
class EpanetAgreesTest {
    /** Every node's pressure [psi]. */
    private static final double PRESSURE_psi = 1e-6;

    /** Every link's flow [gpm]: the answers are written to a millionth, and where the loss is flat flow is less exact. */
    private static final double FLOW_gpm = 1e-5;

    /** Where a tip is dry or a pump pushed shut, the engine lets water through it and is itself no nearer [psi, gpm]. */
    private static final double LEAK_psi = 1e-3;

    private static final double LEAK_gpm = 1e-2;

    private static final int LEAST_CASES = 240;

    @Test
    void networksAgree() {
        agree(EpanetCase.listIn(EpanetCase.resource("epanet-cases.txt")), LEAST_CASES);
    }

    /** A thousand, solved anew by the engine: the check makes them with Node before this test. */
    @Test
    @Tag("long")
    void thousandNetworksAgree() throws IOException {
        Path folder = Path.of(System.getProperty("hosewright.reference"));
        agree(EpanetCase.listIn(Files.readString(folder.resolve("epanet-cases.txt"))), 1000);
    }

    private static void agree(List<EpanetCase> cases, int least) {
        assertThat(cases.stream().filter(one -> !one.isShut())).hasSizeGreaterThanOrEqualTo(least);
        double pressure_psi = 0;
        double flow_gpm = 0;
        for (EpanetCase one : cases) {
            NetworkState state = NetworkSolver.solve(one.network());
            double off_psi = pressureOff_psi(one, state);
            double off_gpm = flowOff_gpm(one, state);
            assertThat(off_psi).as("psi, " + one).isLessThan(one.isShut() ? LEAK_psi : PRESSURE_psi);
            assertThat(off_gpm).as("gpm, " + one).isLessThan(one.isShut() ? LEAK_gpm : FLOW_gpm);
            pressure_psi = one.isShut() ? pressure_psi : Math.max(pressure_psi, off_psi);
            flow_gpm = one.isShut() ? flow_gpm : Math.max(flow_gpm, off_gpm);
        }
        System.out.println(cases.size() + " networks: at most " + pressure_psi + " psi and " + flow_gpm + " gpm apart");
    }

    private static double pressureOff_psi(EpanetCase one, NetworkState state) {
        double off = 0;
        for (Map.Entry<String, Double> head : one.heads_ft().entrySet()) {
            double ours = state.head_Pa(head.getKey());
            off = Math.max(off, Math.abs(EpanetUnits.psi(ours - EpanetUnits.head_Pa(head.getValue()))));
        }
        return off;
    }

    private static double flowOff_gpm(EpanetCase one, NetworkState state) {
        double off = 0;
        for (Map.Entry<String, Double> flow : one.flows_gpm().entrySet()) {
            off = Math.max(off, Math.abs(EpanetUnits.gpm(state.flow_m3s(flow.getKey())) - flow.getValue()));
        }
        return off;
    }
}
