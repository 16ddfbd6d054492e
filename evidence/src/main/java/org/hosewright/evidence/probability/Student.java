package org.hosewright.evidence.probability;

import org.hosewright.hydraulics.quantity.Numbers;

/** Student's t: what a mean of few may be off by, in its own standard errors.
 *
 * @param freedom degrees of freedom, whole or not; above 0
 */
public record Student(double freedom) {
    private static final int STEPS = 200;

    /** The share of a quantile that is left to chance. */
    private static final double STILL = 1e-12;

    /** From here on the square root of a chi-square over its freedom is integrated at so many points. */
    private static final int POINTS = 400;

    public Student {
        Numbers.requirePositive("degrees of freedom", freedom);
    }

    /** Probability of a value up to t. */
    public double cumulative(double t) {
        double tail = Gamma.beta(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
        return t > 0 ? 1 - tail : tail;
    }

    /** Density at t. */
    public double density(double t) {
        double front = Gamma.log((freedom + 1) / 2) - Gamma.log(freedom / 2) - Math.log(freedom * Math.PI) / 2;
        return Math.exp(front - (freedom + 1) / 2 * Math.log(1 + t * t / freedom));
    }

    /** The value that is not passed with a probability between 0 and 1. */
    public double quantile(double probability) {
        if (probability < 0.5) {
            return -quantile(1 - probability);
        }
        double low = 0;
        double high = 1;
        while (cumulative(high) < probability && high < 1e100) {
            low = high;
            high *= 2;
        }
        double t = (low + high) / 2;
        for (int i = 0; i < STEPS && high - low > STILL * high; i++) {
            double over = cumulative(t) - probability;
            low = over < 0 ? t : low;
            high = over < 0 ? high : t;
            double next = t - over / density(t);
            if (Math.abs(next - t) < STILL * t) {
                break;
            }
            t = next > low && next < high ? next : (low + high) / 2;
        }
        return t;
    }

    /** Probability of passing a bound upward where the true value lies off 0 (noncentral t).
     *
     * <p>The normal tail is integrated over the spread of the estimated deviation.
     *
     * @param bound what is to be passed
     * @param off by how many standard errors the true value lies off 0
     */
    public double passes(double bound, double off) {
        double width = 10 / Math.sqrt(2 * freedom);
        double from = Math.max(0, 1 - width);
        double step = (1 + width - from) / POINTS;
        double sum = 0;
        double weight = 0;
        for (int i = 0; i <= POINTS; i++) {
            double s = from + i * step;
            double simpson = i == 0 || i == POINTS ? 1 : i % 2 == 1 ? 4 : 2;
            double density = simpson * chi(s);
            weight += density;
            sum += density * (1 - Normal.cumulative(bound * s - off));
        }
        return sum / weight;
    }

    /** Density, but for a constant, of the estimated over the true deviation. */
    private double chi(double s) {
        return s <= 0 ? 0 : Math.exp((freedom - 1) * Math.log(s) - freedom * (s * s - 1) / 2);
    }
}
