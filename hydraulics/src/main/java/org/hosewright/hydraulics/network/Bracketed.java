package org.hosewright.hydraulics.network;

import java.util.OptionalDouble;

/** One number left open, found by Newton steps kept between two values that miss on either side.
 *
 * <p>Where laws have kinks the steps of a bordered system may circle; here each step starts from a network solved.
 */
final class Bracketed {
    private static final int STEPS = 100;
    private static final double LEAST_REACH_PA = 1e5;

    /** Beyond these a head and a law's number are no answer. */
    private static final double MOST_PA = 1e9;

    private static final double MOST = 1e25;

    private static final double MET = 1e-10;

    /** A step below this share of the number is rounding [1]. */
    private static final double STILL = 1e-12;

    private final Network network;
    private final Freed freed;
    private final Wanted wanted;
    private double low = Double.NaN;
    private double high = Double.NaN;
    private double missAtLow;

    Bracketed(Network network, Freed freed, Wanted wanted) {
        this.network = network;
        this.freed = freed;
        this.wanted = wanted;
    }

    /** The number; absent where no sign changes. */
    OptionalDouble find() {
        double value = start();
        double most = freed.isHead() ? MOST_PA : MOST;
        double reach = freed.isHead() ? Math.max(LEAST_REACH_PA, Math.abs(value)) : Math.abs(value);
        for (int step = 0; step < STEPS && Math.abs(value) < most; step++) {
            NetworkState state = NetworkSolver.solve(network(network, freed, value));
            double miss = answer(state) - wanted.value();
            keep(value, miss);
            double slope = slope(state);
            double next = slope == 0 ? value + reach : value - miss / slope;
            next = within(next, value, reach, step > STEPS / 3);
            boolean met = Math.abs(miss) <= MET * Math.abs(wanted.value());
            if (met || Math.abs(next - value) <= STILL * Math.abs(value)) {
                return OptionalDouble.of(value);
            }
            value = next;
            reach *= 2;
        }
        return OptionalDouble.empty();
    }

    private double within(double aim, double value, double reach, boolean halve) {
        double next = Math.max(value - reach, Math.min(value + reach, aim));
        next = freed.isHead() ? next : Math.max(next, value / 10);
        boolean enclosed = !Double.isNaN(low) && !Double.isNaN(high);
        boolean inside = next > Math.min(low, high) && next < Math.max(low, high);
        return enclosed && (!inside || halve) ? (low + high) / 2 : next;
    }

    private double start() {
        return freed.isHead()
                ? network.head_Pa(network.nodeAt(freed.of(), ""))
                : network.law(freed.of()).coefficient(freed.coefficient());
    }

    static Network network(Network network, Freed freed, double value) {
        return freed.isHead()
                ? network.withHead(freed.of(), value)
                : network.withLaw(freed.of(), network.law(freed.of()).withCoefficient(freed.coefficient(), value));
    }

    private void keep(double value, double miss) {
        if (Double.isNaN(low) || (miss > 0) == (missAtLow > 0)) {
            low = value;
            missAtLow = miss;
        } else {
            high = value;
        }
    }

    private double answer(NetworkState state) {
        return wanted.isFlow() ? state.flow_m3s(wanted.at()) : state.head_Pa(wanted.at());
    }

    private double slope(NetworkState state) {
        Derivatives by = wanted.isFlow() ? state.ofFlow(wanted.at()) : state.ofHead(wanted.at());
        return freed.isHead() ? by.byFixedHead(freed.of()) : by.byCoefficient(freed.of(), freed.coefficient());
    }
}
