package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.Square;
import org.junit.jupiter.api.Test;

/** Random networks of hose, mains and tips. */
class NetworkSolverTest {
    private static final int CASES = 10_000;
    private static final long SEED = 20_310L;

    @Test
    void massAndEnergyOfRandomNetworksHolds() {
        for (int i = 0; i < CASES; i++) {
            Network network = random(new Random(SEED + i), 900_000);
            NetworkState state = new NetworkSolver().solve(network);
            double[] net = new double[network.listNodes().size()];
            double largest = 1e-9;
            for (String name : network.listLinks()) {
                int k = network.linkAt(name);
                double flow = state.flow_m3s(name);
                net[network.from(k)] -= flow;
                net[network.to(k)] += flow;
                largest = Math.max(largest, Math.abs(flow));
                Law law = network.law(k);
                String near = network.listNodes().get(network.from(k));
                String far = network.listNodes().get(network.to(k));
                double drop = state.head_Pa(near) - state.head_Pa(far);
                boolean shut = law instanceof OneWay && flow == 0;
                double off = shut ? Math.max(0, drop - law.loss_Pa(0)) : Math.abs(drop - law.loss_Pa(flow));
                assertThat(off).as("energy of %s, seed %s", name, SEED + i).isLessThan(1e-10 * 1.2e6);
            }
            for (int n = 0; n < net.length; n++) {
                if (Double.isNaN(network.head_Pa(n))) {
                    assertThat(Math.abs(net[n])).as("seed %s", SEED + i).isLessThan(2e-12 * largest);
                }
            }
        }
    }

    @Test
    void morePumpNeverLowersATipHolds() {
        for (int i = 0; i < 500; i++) {
            Network less = random(new Random(SEED + i), 700_000);
            NetworkState low = new NetworkSolver().solve(less);
            NetworkState high = new NetworkSolver().solve(random(new Random(SEED + i), 800_000));
            for (String name : less.listLinks()) {
                if (name.startsWith("tip")) {
                    assertThat(high.flow_m3s(name))
                            .as("seed %s", SEED + i)
                            .isGreaterThanOrEqualTo(low.flow_m3s(name) - 1e-9);
                }
            }
        }
    }

    @Test
    void nodeWithoutAFixedHeadIsRefused() {
        Network network = new Network().fixed("pump", 1e6).free("wye").free("island");
        network.link("hose", "pump", "wye", new Square(1e9));
        assertThatThrownBy(() -> new NetworkSolver().solve(network))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("island");
    }

    private static Network random(Random random, double pump_Pa) {
        int nodes = 1 + random.nextInt(30);
        Network network = new Network().fixed("pump", pump_Pa);
        for (int i = 0; i < nodes; i++) {
            network.free("n" + i);
            network.link("hose" + i, i == 0 ? "pump" : "n" + random.nextInt(i), "n" + i, law(random));
        }
        for (int i = 0; i < nodes; i++) {
            if (random.nextInt(3) == 0) {
                String to = "n" + random.nextInt(nodes);
                if (!to.equals("n" + i)) {
                    network.link("loop" + i, "n" + i, to, law(random));
                }
            }
            if (random.nextInt(3) == 0) {
                network.fixed("air" + i, (random.nextDouble() - 0.3) * 300_000);
                network.link("tip" + i, "n" + i, "air" + i, new OneWay(law(random)));
            }
        }
        return network;
    }

    private static Law law(Random random) {
        double r = Math.pow(10, 8 + 3 * random.nextDouble());
        return random.nextInt(4) == 0 ? new Power(r, Power.HAZEN_WILLIAMS) : new Square(r);
    }
}
