package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.error.NotConverged;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Square;
import org.junit.jupiter.api.Test;

/** Networks asked backwards, and forward again. */
class AskingTest {
    /** What is wanted is met to this share [1]. */
    private static final double MET = 1e-9;

    private static final long SEED = 77_301L;

    @Test
    void forwardOfInverseHolds() {
        int asked = 0;
        for (long seed = SEED; asked < 300; seed++) {
            Network network = RandomNetworks.of(seed, 40, 9e5);
            NetworkState state = NetworkSolver.solve(network);
            for (String link : network.listLinks()) {
                boolean smooth = link.startsWith("tip") && state.flow_m3s(link) > 1e-3;
                if (smooth && state.ofFlow(link).byFixedHead("pump") > 1e-10) {
                    Network weaker = network.withHead("pump", 6e5);
                    Found found = Asking.find(
                            weaker, List.of(Freed.head("pump")), List.of(Wanted.flow(link, state.flow_m3s(link))));
                    assertThat(found.state().flow_m3s(link))
                            .as("seed %s, %s", seed, link)
                            .isEqualTo(state.flow_m3s(link), within(MET * state.flow_m3s(link) + 1e-12));
                    asked++;
                    break;
                }
            }
        }
    }

    @Test
    void fiftyAtEachTipHolds() {
        double want_Pa = 345_000;
        Network network = new Network().fixed("pump", 8e5);
        double[] hose = {3e9, 5e9, 2e9};
        for (int i = 0; i < 3; i++) {
            network.free("gate" + i).free("tip" + i).fixed("air" + i, 2e4 * i);
            network.link("gate" + i, "pump", "gate" + i, new Square(1e7));
            network.link("hose" + i, "gate" + i, "tip" + i, new Square(hose[i]));
            network.link("nozzle" + i, "tip" + i, "air" + i, new OneWay(new Square(4e9)));
        }
        Found found = Asking.find(
                network,
                List.of(Freed.coefficient("gate0", 0), Freed.coefficient("gate2", 0), Freed.head("pump")),
                List.of(
                        Wanted.head("tip0", want_Pa),
                        Wanted.head("tip2", want_Pa + 4e4),
                        Wanted.head("tip1", want_Pa + 2e4)));
        for (int i = 0; i < 3; i++) {
            double tip = found.state().head_Pa("tip" + i) - 2e4 * i;
            assertThat(tip).isEqualTo(want_Pa, within(MET * want_Pa));
        }
        double flow2 = want_Pa / 4e9;
        assertThat(found.values().get(2)).isEqualTo(want_Pa + 2e4 + flow2 * (5e9 + 1e7), within(1e-3));
    }

    @Test
    void tipShutAtTheStartOpensHolds() {
        Network network = new Network().fixed("pump", 0).free("tip").fixed("air", 3e5);
        network.link("hose", "pump", "tip", new Square(3e9));
        network.link("nozzle", "tip", "air", new OneWay(new Square(4e9)));
        Found found = Asking.find(network, List.of(Freed.head("pump")), List.of(Wanted.flow("nozzle", 0.01)));
        assertThat(found.values().get(0)).isEqualTo(3e5 + 7e5, within(1e-3));
    }

    @Test
    void impossibleAndUnevenAsksRefused() {
        Network network =
                new Network().fixed("pump", 8e5).free("tip").fixed("air", 0).fixed("other", 0);
        network.link("hose", "pump", "tip", new Square(3e9));
        network.link("nozzle", "tip", "air", new OneWay(new Square(4e9)));
        assertThatThrownBy(() -> Asking.find(network, List.of(Freed.head("pump")), List.of()))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Asking.find(network, List.of(Freed.head("tip")), List.of(Wanted.flow("nozzle", 0.01))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("tip");
        assertThatThrownBy(
                        () -> Asking.find(network, List.of(Freed.head("other")), List.of(Wanted.flow("nozzle", 0.01))))
                .isInstanceOf(NotConverged.class)
                .hasMessageContaining("nozzle");
    }
}
