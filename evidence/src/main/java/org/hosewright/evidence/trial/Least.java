package org.hosewright.evidence.trial;

import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** The least count that is enough, where more is always enough too. */
final class Least {
    private Least() {}

    /** The least count from a first one on; empty where even the most is not enough. */
    static OptionalInt find(int first, int most, IntPredicate enough) {
        int low = first - 1;
        int high = first;
        while (!enough.test(high)) {
            if (high >= most) {
                return OptionalInt.empty();
            }
            low = high;
            high = Math.min(most, 2 * high);
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (enough.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalInt.of(high);
    }
}
