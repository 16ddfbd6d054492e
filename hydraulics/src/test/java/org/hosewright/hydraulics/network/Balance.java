package org.hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;

import org.hosewright.hydraulics.network.law.Law;

/** Checks a solved network from outside: mass at every free node, energy at every link. */
final class Balance {
    /** Rounding of a head of a megapascal or so that is a sum of two numbers [Pa]. */
    private static final double ROUNDING_PA = 2e-9;

    private Balance() {}

    static void require(Network network, NetworkState state, String as) {
        double[] out = new double[network.nodes()];
        double largest = 0;
        double span = Math.max(1, span(network));
        for (int k = 0; k < network.links(); k++) {
            double flow = state.flow_m3s(network.linkName(k));
            out[network.from(k)] += flow;
            out[network.to(k)] -= flow;
            largest = Math.max(largest, Math.abs(flow));
            span = Math.max(span, Math.abs(network.law(k).loss_Pa(flow)));
        }
        for (int i = 0; i < out.length; i++) {
            largest = Math.max(largest, Math.abs(network.demand_m3s(i)));
        }
        for (int k = 0; k < network.links(); k++) {
            Law law = network.law(k);
            double drop =
                    state.head_Pa(network.nodeName(network.from(k))) - state.head_Pa(network.nodeName(network.to(k)));
            assertThat(law.misfit_Pa(state.flow_m3s(network.linkName(k)), drop))
                    .as("energy of %s, %s", network.linkName(k), as)
                    .isLessThanOrEqualTo(NetworkSolver.ENERGY * span + ROUNDING_PA);
        }
        for (int i = 0; i < out.length; i++) {
            double off = network.isFixed(i) ? 0 : out[i] + network.demand_m3s(i);
            assertThat(Math.abs(off))
                    .as("mass at %s, %s", network.nodeName(i), as)
                    .isLessThanOrEqualTo(NetworkSolver.MASS * Math.max(largest, 1e-9));
        }
    }

    private static double span(Network network) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double gain = 0;
        for (int i = 0; i < network.nodes(); i++) {
            low = network.isFixed(i) ? Math.min(low, network.head_Pa(i)) : low;
            high = network.isFixed(i) ? Math.max(high, network.head_Pa(i)) : high;
        }
        for (int k = 0; k < network.links(); k++) {
            gain = Math.max(gain, -network.law(k).loss_Pa(0));
        }
        return Math.max(high - low, gain);
    }
}
