package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;

/** Round numbers along an axis: steps of 1, 2 or 5 times a power of ten.
 *
 * @param step from one to the next
 * @param values from the lowest to the highest
 */
record Ticks(double step, List<Double> values) {
    private static final double[] STEPS = {1, 2, 5};

    /** How far beyond an end a round number still counts as on it, in steps. */
    private static final double ON_END = 1e-9;

    Ticks {
        values = List.copyOf(values);
    }

    /** The round numbers within a range.
     *
     * @param most how many steps at most; 1 or more
     */
    static Ticks of(double low, double high, double most) {
        double step = step((high - low) / Math.max(1, most));
        List<Double> values = new ArrayList<>();
        double last = Math.floor(high / step + ON_END);
        for (double i = Math.ceil(low / step - ON_END); i <= last; i++) {
            values.add(step < 1 ? i / (1 / step) : i * step);
        }
        return new Ticks(step, values);
    }

    private static double step(double least) {
        double power = 1;
        while (power > least) {
            power /= 10;
        }
        while (power * 10 <= least) {
            power *= 10;
        }
        for (double times : STEPS) {
            if (times * power >= least * (1 - ON_END)) {
                return times * power;
            }
        }
        return 10 * power;
    }
}
