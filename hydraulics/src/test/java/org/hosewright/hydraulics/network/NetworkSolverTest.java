package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.Allowance;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Square;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Random networks of hose, mains, pumps and tips. */
class NetworkSolverTest {
    private static final int CASES = 10_000;
    private static final int MANY = 100_000;
    private static final int MOST_NODES = 200;
    private static final long SEED = 20_310L;
    private static final double PUMP_PA = 9e5;

    /** Rounding of a flow that is solved to 1e-12 of the largest [m3/s]. */
    private static final double TRIFLE_M3S = 1e-9;

    @Test
    void massAndEnergyOfRandomNetworksHold() {
        balance(SEED, CASES);
    }

    @Test
    @Tag("long")
    void massAndEnergyOfManyRandomNetworksHold() {
        balance(SEED + CASES, MANY);
    }

    @Test
    void morePumpNeverLowersATipHolds() {
        for (int i = 0; i < CASES / 10; i++) {
            Network less = RandomNetworks.of(SEED + i, 60, 7e5);
            NetworkState low = NetworkSolver.solve(less);
            NetworkState high = NetworkSolver.solve(RandomNetworks.of(SEED + i, 60, 8e5));
            for (String name : less.listLinks()) {
                if (name.startsWith("tip")) {
                    assertThat(high.flow_m3s(name))
                            .as("seed %s", SEED + i)
                            .isGreaterThanOrEqualTo(low.flow_m3s(name) - TRIFLE_M3S);
                }
            }
        }
    }

    @Test
    void likeLegsGetLikeFlowHolds() {
        Network network = new Network().fixed("pump", PUMP_PA).free("wye").fixed("air", 0);
        network.link("hose", "pump", "wye", new Square(3e8));
        network.link("left", "wye", "air", new OneWay(new Square(5e9)));
        network.link("right", "wye", "air", new OneWay(new Square(5e9)));
        NetworkState state = NetworkSolver.solve(network);
        assertThat(state.flow_m3s("left")).isEqualTo(state.flow_m3s("right"), within(1e-15));
        assertThat(state.flow_m3s("left")).isEqualTo(Math.sqrt(PUMP_PA / (4 * 3e8 + 5e9)), within(1e-12));
    }

    @Test
    void flowOnTheThresholdOfAnAllowanceHolds() {
        double from_m3s = 0.01;
        Network network = new Network().fixed("pump", PUMP_PA).free("gate").fixed("air", 0);
        network.link("wye", "pump", "gate", new Allowance(1e5, from_m3s));
        network.link("tip", "gate", "air", new OneWay(new Square((PUMP_PA - 5e4) / (from_m3s * from_m3s))));
        NetworkState state = NetworkSolver.solve(network);
        assertThat(state.flow_m3s("tip")).isEqualTo(from_m3s, within(2e-9 * from_m3s));
        Balance.require(network, state, "threshold");
    }

    @Test
    void nodeWithoutAFixedHeadIsRefused() {
        Network network = new Network().fixed("pump", 1e6).free("wye").free("island");
        network.link("hose", "pump", "wye", new Square(1e9));
        assertThatThrownBy(() -> NetworkSolver.solve(network))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("island");
    }

    @Test
    void demandBehindACheckValveIsRefused() {
        Network network = new Network().fixed("pump", 1e6).free("house").demand("house", 0.001);
        network.link("check", "house", "pump", new OneWay(new Square(1e9)));
        assertThatThrownBy(() -> NetworkSolver.solve(network))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("house");
    }

    @Test
    void unknownAndRepeatedNamesAreRefused() {
        Network network = new Network().fixed("pump", 1e6).free("wye");
        assertThatThrownBy(() -> network.link("hose", "pump", "gate", new Square(1)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("gate");
        assertThatThrownBy(() -> network.free("wye"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("wye");
        assertThatThrownBy(() -> network.demand("pump", 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("pump");
    }

    private static void balance(long seed, int cases) {
        for (int i = 0; i < cases; i++) {
            Network network = RandomNetworks.of(seed + i, MOST_NODES, PUMP_PA);
            Balance.require(network, NetworkSolver.solve(network), "seed " + (seed + i));
        }
    }
}
