package org.hosewright.evidence.trial;

import org.hosewright.hydraulics.quantity.Numbers;

/** All pairs of a trial judged together, so that the chance of even one false verdict stays at 5 %.
 *
 * <p>Each pair is judged at the level that Sidak's inequality gives.
 *
 * @param pairs how many pairs are judged
 * @source A. C. Tamhane, Multiple comparisons in model I one-way ANOVA with unequal variances, Communications in Statistics A6, 1977 (his T2)
 */
record Family(int pairs) {
    static final double ALPHA = 0.05;

    Family {
        Numbers.requirePositive("pairs", pairs);
    }

    static Family of(int kinds) {
        return of(kinds, 1);
    }

    /** All pairs of a trial whose verdict is looked at so often: each look at a pair is one more that is judged. */
    static Family of(int kinds, int looks) {
        return new Family(kinds * (kinds - 1) / 2 * looks);
    }

    /** The level of one pair. */
    double level() {
        return 1 - Math.exp(Math.log(1 - ALPHA) / pairs);
    }

    /** A pair's chance adjusted for the others. */
    double adjusted(double chance) {
        return chance >= 1 ? 1 : 1 - Math.exp(pairs * Math.log(1 - chance));
    }
}
