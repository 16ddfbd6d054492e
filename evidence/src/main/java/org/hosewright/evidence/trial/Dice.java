package org.hosewright.evidence.trial;

import java.util.ArrayList;
import java.util.List;

/** Chance that comes from a seed given from outside, the same on every machine.
 *
 * @source G. Steele, D. Lea and C. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014 (SplitMix64)
 */
final class Dice {
    private long state;

    Dice(long seed) {
        state = seed;
    }

    /** A whole number from 0 up to but not including a bound, each equally likely. */
    int below(int bound) {
        long range = 1L << 31;
        long fair = range - range % bound;
        long drawn;
        do {
            drawn = next() >>> 33;
        } while (drawn >= fair);
        return (int) (drawn % bound);
    }

    /** The same things in another order, each order equally likely. */
    <T> List<T> shuffled(List<T> things) {
        List<T> order = new ArrayList<>(things);
        for (int i = order.size() - 1; i > 0; i--) {
            int j = below(i + 1);
            T kept = order.get(i);
            order.set(i, order.get(j));
            order.set(j, kept);
        }
        return order;
    }

    private long next() {
        state += 0x9E3779B97F4A7C15L;
        long mixed = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }
}
