package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.PumpGain;
import org.hosewright.hydraulics.network.law.Square;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
    void tablesAndSingleScenariosAgree() {
        List<Freed> varied = List.of(
                Freed.head("main"), Freed.coefficient("hose0", 0), Freed.coefficient("hose3", 0), Freed.head("air1"));
        Scenarios scenarios = new Scenarios(engine(), varied);
        double[][] values = new double[4][500];
        Random random = new Random(SEED);
        for (int i = 0; i < 500; i++) {
            values[0][i] = 3e5 + 2e5 * random.nextDouble();
            values[1][i] = 2e9 * (0.5 + random.nextDouble());
            values[2][i] = 2e9 * (0.2 + 3 * random.nextDouble());
            values[3][i] = 2.5e6 * random.nextDouble();
        }
        int[] links = IntStream.range(0, engine().links()).toArray();
        double[][] along = new double[links.length][500];
        double[][] afresh = new double[links.length][500];
        scenarios.solve(values, links, along);
        scenarios.solveAfresh(values, links, afresh);
        int shut = 0;
        int tip1 = scenarios.link("tip1");
        for (int i = 0; i < 500; i++) {
            for (int v = 0; v < values.length; v++) {
                scenarios.set(v, values[v][i]);
            }
            scenarios.solve();
            shut += scenarios.flow_m3s(tip1) == 0 ? 1 : 0;
            for (int k : links) {
                double flow = scenarios.flow_m3s(k);
                double close = CLOSE * scenarios.flow_m3s(scenarios.link("pump"));
                assertThat(along[k][i])
                        .as("link %s, seed %s, case %s", k, SEED, i)
                        .isEqualTo(flow, within(close));
                assertThat(afresh[k][i])
                        .as("link %s, seed %s, case %s", k, SEED, i)
                        .isEqualTo(flow, within(close));
            }
        }
        assertThat(shut).as("scenarios with a tip held shut").isBetween(50, 450);
    }

    @Test
    void mainsOfAGridAgree() {
        Network grid = grid();
        Scenarios scenarios = new Scenarios(grid, List.of(Freed.head("source")));
        double[][] heads = {
            IntStream.range(0, 70).mapToDouble(i -> 8e5 + 2e3 * i).toArray()
        };
        int[] mains = IntStream.range(0, grid.links()).toArray();
        double[][] flows = new double[mains.length][70];
        scenarios.solveAfresh(heads, mains, flows);
        for (int i = 0; i < 70; i++) {
            NetworkState state = NetworkSolver.solve(grid.withHead("source", heads[0][i]));
            for (int k : mains) {
                double flow = state.flow_m3s(grid.listLinks().get(k));
                assertThat(flows[k][i]).as("main %s, case %s", k, i).isEqualTo(flow, within(CLOSE * 0.02));
            }
        }
    }

    /** Mains by Hazen-Williams, four by four, water drawn at the crossings, one corner fed. */
    private static Network grid() {
        Network grid = new Network().fixed("source", 9e5);
        for (int i = 0; i < 16; i++) {
            grid.free("n" + i).demand("n" + i, 0.001);
        }
        for (int i = 0; i < 16; i++) {
            if (i % 4 > 0) {
                grid.link("across" + i, "n" + (i - 1), "n" + i, new Power(1e7 * (1 + i), Power.HAZEN_WILLIAMS));
            }
            if (i >= 4) {
                grid.link("along" + i, "n" + (i - 4), "n" + i, new Power(2e7 * (17 - i), Power.HAZEN_WILLIAMS, 1e6));
            }
        }
        return grid.link("supply", "source", "n0", new Power(1e6, Power.HAZEN_WILLIAMS));
    }

    @Test
    void tableThatDoesNotFitRefused() {
        Scenarios scenarios = new Scenarios(engine(), List.of(Freed.head("main")));
        assertThatThrownBy(() -> scenarios.solve(new double[2][20], new int[1], new double[1][20]))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("varied");
        assertThatThrownBy(() -> scenarios.solve(new double[1][20], new int[1], new double[1][21]))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("21");
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 100})
    void answersFreeOfTheirOrderHold(int count) {
        Scenarios scenarios = new Scenarios(engine(), List.of(Freed.head("main")));
        int[] tips = {scenarios.link("tip0"), scenarios.link("tip4")};
        double[][] up = new double[2][count];
        double[][] down = new double[2][count];
        double[] rising =
                IntStream.range(0, count).mapToDouble(i -> 3e5 + 2e3 * i).toArray();
        double[] falling = IntStream.range(0, count)
                .mapToDouble(i -> rising[count - 1 - i])
                .toArray();
        scenarios.solve(new double[][] {rising}, tips, up);
        scenarios.solve(new double[][] {falling}, tips, down);
        for (int tip = 0; tip < 2; tip++) {
            for (int i = 0; i < count; i++) {
                assertThat(up[tip][i]).isEqualTo(down[tip][count - 1 - i]);
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
