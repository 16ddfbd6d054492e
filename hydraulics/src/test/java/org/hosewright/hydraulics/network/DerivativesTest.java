package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.DarcyWeisbach;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.PumpGain;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.network.law.Water;
import org.junit.jupiter.api.Test;

/** Derivatives from one factor against networks solved anew beside the one asked about. */
class DerivativesTest {
    /** Central differences of this share leave errors of the third order and of rounding [1]. */
    private static final double STEP = 1e-4;

    private static final double CLOSE = 1e-6;

    private final Law[] laws = {
        new PumpGain(6e5, 8e8, 1.9),
        new Square(4e8),
        new Power(2e8, Power.HAZEN_WILLIAMS, 1e7),
        new DarcyWeisbach(120, 0.07, 1e-4, 2, Water.AT_20_C),
        new OneWay(new Square(5e9)),
        new OneWay(new Square(7e9)),
        new DarcyWeisbach(5, 0.2, 1e-5, 0, new Water(998, 2e-5))
    };

    @Test
    void everyCoefficientAgrees() {
        NetworkState state = NetworkSolver.solve(network(laws, 2e5, 0.001));
        for (int k = 0; k < laws.length; k++) {
            for (int at = 0; at < laws[k].listCoefficients().size(); at++) {
                double value = laws[k].coefficient(at);
                NetworkState less = NetworkSolver.solve(network(with(k, at, value * (1 - STEP)), 2e5, 0.001));
                NetworkState more = NetworkSolver.solve(network(with(k, at, value * (1 + STEP)), 2e5, 0.001));
                double two = 2 * STEP * value == 0 ? 1 : 2 * STEP * value;
                String as = "link " + k + " " + laws[k].listCoefficients().get(at);
                double head = (more.head_Pa("b") - less.head_Pa("b")) / two;
                double flow = (more.flow_m3s("l3") - less.flow_m3s("l3")) / two;
                double scale = Math.max(1e-300, Math.abs(value));
                close(state.ofHead("b").byCoefficient("l" + k, at) * scale, head * scale, 1e5, as);
                close(state.ofFlow("l3").byCoefficient("l" + k, at) * scale, flow * scale, 1e-3, as);
            }
        }
    }

    @Test
    void fixedHeadAndDemandAgree() {
        NetworkState state = NetworkSolver.solve(network(laws, 2e5, 0.001));
        double byHead = (NetworkSolver.solve(network(laws, 2e5 + 20, 0.001)).flow_m3s("l4")
                        - NetworkSolver.solve(network(laws, 2e5 - 20, 0.001)).flow_m3s("l4"))
                / 40;
        double byDemand = (NetworkSolver.solve(network(laws, 2e5, 0.001001)).head_Pa("c")
                        - NetworkSolver.solve(network(laws, 2e5, 0.000999)).head_Pa("c"))
                / 2e-6;
        assertThat(state.ofFlow("l4").byFixedHead("tank")).isEqualTo(byHead, within(CLOSE * byHead));
        assertThat(state.ofHead("c").byDemand("b")).isEqualTo(byDemand, within(-CLOSE * byDemand));
        assertThat(state.ofHead("tank").byFixedHead("tank")).isEqualTo(1);
    }

    @Test
    void derivativeByADemandOfAFixedNodeRefused() {
        NetworkState state = NetworkSolver.solve(network(laws, 2e5, 0.001));
        assertThatThrownBy(() -> state.ofHead("b").byDemand("tank"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("tank");
    }

    private static void close(double found, double expected, double scale, String as) {
        assertThat(found).as(as).isEqualTo(expected, within(CLOSE * scale));
    }

    private Law[] with(int k, int at, double value) {
        Law[] changed = laws.clone();
        changed[k] = laws[k].withCoefficient(at, value);
        return changed;
    }

    private static Network network(Law[] laws, double tank_Pa, double demand_m3s) {
        Network network =
                new Network().fixed("tank", tank_Pa).free("a").free("b").free("c");
        network.fixed("air", 0).fixed("roof", 6e4).demand("b", demand_m3s);
        String[][] ends = {{"tank", "a"}, {"a", "b"}, {"b", "c"}, {"a", "c"}, {"b", "air"}, {"c", "roof"}, {"a", "b"}};
        for (int k = 0; k < laws.length; k++) {
            network.link("l" + k, ends[k][0], ends[k][1], laws[k]);
        }
        return network;
    }
}
