package org.hosewright.evidence.probability;

/** The normal distribution where it is needed: its density over its cumulative, without running out of digits. */
public final class Normal {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double FAR = -5;
    private static final int TERMS = 200;

    private Normal() {}

    public static double density(double x) {
        return Math.exp(-x * x / 2) / ROOT_TWO_PI;
    }

    /** Density over cumulative (inverse Mills ratio of -x), positive everywhere. */
    public static double hazard(double x) {
        if (x < FAR) {
            // Continued fraction of the Mills ratio, Abramowitz and Stegun 26.2.14.
            double fraction = -x;
            for (int k = 40; k >= 1; k--) {
                fraction = -x + k / fraction;
            }
            return fraction;
        }
        return density(x) / cumulative(x);
    }

    /** Cumulative probability by its series, Abramowitz and Stegun 26.2.11; good from -5 upward. */
    public static double cumulative(double x) {
        if (x > 8) {
            return 1;
        }
        if (x < FAR) {
            return density(x) / hazard(x);
        }
        double term = x;
        double sum = x;
        for (int k = 1; k < TERMS && Math.abs(term) > 1e-17; k++) {
            term *= x * x / (2 * k + 1);
            sum += term;
        }
        return 0.5 + density(x) * sum;
    }
}
