package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.PumpGain;
import org.hosewright.hydraulics.network.law.Square;
import org.junit.jupiter.api.Test;

/** Many scenarios of one lay against each solved by itself. */
class ScenariosTest {
    /** Both are held to 1e-10 of the pressure scale; flows of open lines follow [1]. */
    private static final double CLOSE = 1e-8;

    private static final long SEED = 90_125L;

    @Test
    void scenariosAndSingleSolvesAgree() {
        Network lay = engine();
        List<Freed> varied = List.of(
                Freed.head("main"), Freed.coefficient("hose0", 0), Freed.coefficient("hose3", 0), Freed.head("air1"));
        Scenarios scenarios = new Scenarios(lay, varied);
        Random random = new Random(SEED);
        for (int i = 0; i < 500; i++) {
            double[] values = {
                3e5 + 2e5 * random.nextDouble(),
                2e9 * (0.5 + random.nextDouble()),
                2e9 * (0.2 + 3 * random.nextDouble()),
                8e5 * random.nextDouble()
            };
            Network one = lay.withHead("main", values[0]).withHead("air1", values[3]);
            one = one.withLaw("hose0", new Square(values[1])).withLaw("hose3", new Square(values[2]));
            for (int v = 0; v < values.length; v++) {
                scenarios.set(v, values[v]);
            }
            scenarios.solve();
            NetworkState state = NetworkSolver.solve(one);
            for (String link : lay.listLinks()) {
                assertThat(scenarios.flow_m3s(scenarios.link(link)))
                        .as("%s, seed %s, case %s", link, SEED, i)
                        .isEqualTo(state.flow_m3s(link), within(CLOSE * state.flow_m3s("pump")));
            }
            assertThat(scenarios.head_Pa(scenarios.node("wye"))).isEqualTo(state.head_Pa("wye"), within(1e-3));
            double along_m3s = scenarios.flow_m3s(scenarios.link("pump"));
            scenarios.solveAfresh();
            assertThat(scenarios.flow_m3s(scenarios.link("pump"))).isEqualTo(along_m3s, within(CLOSE * along_m3s));
        }
    }

    @Test
    void answersFreeOfTheirOrderHold() {
        Scenarios scenarios = new Scenarios(engine(), List.of(Freed.head("main")));
        int[] tips = {scenarios.link("tip0"), scenarios.link("tip4")};
        double[][] up = new double[2][3];
        double[][] down = new double[2][3];
        scenarios.solve(new double[][] {{3e5, 4e5, 5e5}}, tips, up);
        scenarios.solve(new double[][] {{5e5, 4e5, 3e5}}, tips, down);
        for (int tip = 0; tip < 2; tip++) {
            for (int i = 0; i < 3; i++) {
                assertThat(up[tip][i]).isEqualTo(down[tip][2 - i]);
            }
        }
    }

    @Test
    void numberThatCannotBeVariedRefused() {
        assertThatThrownBy(() -> new Scenarios(engine(), List.of(Freed.coefficient("pump", 0))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("pump");
        assertThatThrownBy(() -> new Scenarios(engine(), List.of(Freed.head("wye"))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("wye");
    }

    /** An engine on two intakes, with four discharges, one of them to a wye. */
    static Network engine() {
        Network lay = new Network()
                .fixed("main", 4e5)
                .free("hydrant")
                .free("intake")
                .free("discharge")
                .free("wye");
        lay.link("hydrant", "main", "hydrant", new Power(6e7, 1.852));
        lay.link("intake1", "hydrant", "intake", new Square(2e7)).link("intake2", "hydrant", "intake", new Square(3e7));
        lay.link("pump", "intake", "discharge", new OneWay(new PumpGain(1.4e6, 2e8, 2)));
        for (int i = 0; i < 4; i++) {
            String end = i == 3 ? "wye" : "nozzle" + i;
            if (i < 3) {
                lay.free(end);
            }
            lay.free("gate" + i).link("gate" + i, "discharge", "gate" + i, new Square(2e7));
            lay.link("hose" + i, "gate" + i, end, new Square(2e9));
        }
        for (int i = 0; i < 5; i++) {
            lay.fixed("air" + i, 0);
            if (i >= 3) {
                lay.free("nozzle" + i).link("leg" + i, "wye", "nozzle" + i, new Square(3e9 + 1e9 * i));
            }
            lay.link("tip" + i, "nozzle" + i, "air" + i, new OneWay(new Square(4e9 + 1e9 * i)));
        }
        return lay;
    }
}
