package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.quantity.Constants;
import org.junit.jupiter.api.Test;

/** Folded networks against the same ones solved node by node, and against the trade's tables. */
class FoldTest {
    /** Two ways to one answer, each to 1e-10 of its scale [1]. */
    private static final double CLOSE = 1e-9;

    /** Where a square loses next to nothing, its flow is known to the root of its loss alone [1]. */
    private static final double WEAK = 1e-5;

    private static final double PUMP_PA = 9e5;
    private static final long SEED = 4_711L;

    @Test
    void foldedAndUnfoldedTreesAgree() {
        for (long seed = SEED; seed < SEED + 2_000; seed++) {
            agree(tree(new Random(seed)), CLOSE, "seed " + seed);
        }
    }

    @Test
    void foldedAndUnfoldedNetworksAgree() {
        for (long seed = SEED; seed < SEED + 1_000; seed++) {
            agree(RandomNetworks.of(seed, 80, PUMP_PA), WEAK, "seed " + seed);
        }
    }

    @Test
    void treeToTipsOfLikeHeightIsClosedFormHolds() {
        Network network =
                new Network().fixed("pump", PUMP_PA).free("wye").fixed("air", 0).fixed("other air", 0);
        network.link("hose", "pump", "wye", new Square(3e8));
        network.link("left", "wye", "air", new OneWay(new Square(4e9)));
        network.link("right", "wye", "other air", new OneWay(new Square(9e9)));
        NetworkState state = NetworkSolver.solve(network);
        double both = 1 / (1 / Math.sqrt(4e9) + 1 / Math.sqrt(9e9));
        assertThat(state.flow_m3s("hose")).isEqualTo(Math.sqrt(PUMP_PA / (3e8 + both * both)), within(1e-15));
        assertThat(state.residuals().steps()).isZero();
    }

    /** City of Renton: two and three 2 1/2 in lines; the handbook's other rows from memory. C applies to all flow. */
    @Test
    void siamesedLinesMatchesPublished() {
        double printed = 0.006;
        assertThat(siamesed(2, 2)).isEqualTo(0.5, within(printed));
        assertThat(siamesed(2, 2, 2)).isEqualTo(0.22, within(printed));
        assertThat(siamesed(0.8, 0.8)).isEqualTo(0.2, within(printed));
        assertThat(siamesed(0.8, 2)).isEqualTo(0.3, within(printed));
        assertThat(siamesed(0.677, 2)).isEqualTo(0.27, within(printed));
        assertThat(siamesed(2, 2, 0.8)).isEqualTo(0.16, within(printed));
        assertThat(siamesed(0.8, 0.8, 2)).isEqualTo(0.12, within(printed));
    }

    /** The coefficient that 100 ft of lines side by side have together, from a solve with 300 gpm through them. */
    private static double siamesed(double... coefficients) {
        double length_m = 100 * Constants.FOOT_M;
        double flow_m3s = 300 * Constants.GPM_M3S;
        Network network = new Network().fixed("pump", PUMP_PA).free("siamese").demand("siamese", flow_m3s);
        for (int i = 0; i < coefficients.length; i++) {
            network.link(
                    "line" + i, "pump", "siamese", new Square(coefficients[i] * Constants.US_HOSE_LOSS * length_m));
        }
        double loss_Pa = PUMP_PA - NetworkSolver.solve(network).head_Pa("siamese");
        return loss_Pa / Constants.PSI_PA / 9;
    }

    private static void agree(Network network, double share, String as) {
        NetworkState state = NetworkSolver.solve(network);
        Compiled whole = new Compiled(network);
        Newton newton = new Newton(whole.iterate());
        NetworkSolver.solve(whole.iterate(), newton);
        assertThat(newton.isSettled()).as(as).isTrue();
        double largest = whole.iterate().largest_m3s();
        for (int k = 0; k < network.links(); k++) {
            assertThat(network.law(k).misfit_Pa(whole.iterate().flow[k], drop(network, state, k)))
                    .as("%s, %s", network.linkName(k), as)
                    .isLessThan(CLOSE * 10 * PUMP_PA);
            assertThat(state.flow_m3s(network.linkName(k)))
                    .as("%s, %s", network.linkName(k), as)
                    .isEqualTo(whole.iterate().flow[k], within(share * largest));
        }
    }

    private static double drop(Network network, NetworkState state, int k) {
        return state.head_Pa(network.nodeName(network.from(k))) - state.head_Pa(network.nodeName(network.to(k)));
    }

    private static Network tree(Random random) {
        int nodes = 1 + random.nextInt(60);
        Network network = new Network().fixed("pump", PUMP_PA);
        for (int i = 0; i < nodes; i++) {
            network.free("n" + i);
            String from = i == 0 ? "pump" : "n" + random.nextInt(i);
            network.link("hose" + i, from, "n" + i, new Square(Math.pow(10, 8 + 2 * random.nextDouble())));
            if (random.nextBoolean()) {
                network.fixed("air" + i, random.nextInt(3) * 3e4);
                network.link("tip" + i, "n" + i, "air" + i, new OneWay(new Square(4e9)));
            }
        }
        return network;
    }
}
