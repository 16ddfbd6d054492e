package org.hosewright.evidence.trial;

import org.hosewright.evidence.probability.Student;

/** The difference of two means whose scatters need not be alike.
 *
 * <p>Its chance is Welch's. Its interval is Cochran's, which is a little wider: with three re-lays of each and very unlike
 * scatters Welch's own would leave out the truth in 7 of 100 trials instead of 5.
 *
 * @param difference of the means
 * @param first the one kind's part in it
 * @param second the other's
 * @param known variance of the difference that does not come from the re-lays
 * @source B. L. Welch, The generalization of 'Student's' problem when several different population variances are involved, Biometrika 34, 1947
 * @source W. G. Cochran and G. M. Cox, Experimental Designs, 2nd edition, 1957, section 4.14
 */
record Welch(double difference, Part first, Part second, double known) {
    private static final int POINTS = 100;

    /** A kind's mean.
     *
     * @param variance of the mean
     * @param freedom re-lays less one
     */
    record Part(double variance, int freedom) {
        static Part of(Standing standing) {
            return new Part(standing.variance().orElseThrow(), standing.relays() - 1);
        }
    }

    /** The difference of two kinds that were each laid twice or more. */
    static Welch of(Standing one, Standing other, double known) {
        return new Welch(one.mean() - other.mean(), Part.of(one), Part.of(other), known);
    }

    double standardError() {
        return Math.sqrt(first.variance + second.variance + known);
    }

    /** Degrees of freedom by Satterthwaite. */
    double freedom() {
        double sum = first.variance + second.variance + known;
        double spread =
                first.variance * first.variance / first.freedom + second.variance * second.variance / second.freedom;
        double most = 1e6;
        return spread * most <= sum * sum ? most : sum * sum / spread;
    }

    /** Probability of a difference as large as this, either way, where there is none. */
    double chance() {
        if (standardError() == 0) {
            return difference == 0 ? 1 : 0;
        }
        return 2 * new Student(freedom()).cumulative(-Math.abs(difference) / standardError());
    }

    /** Half-width of the interval that leaves out the truth at most so often. */
    double half(double level) {
        double one = new Student(first.freedom).quantile(1 - level / 2);
        double other = new Student(second.freedom).quantile(1 - level / 2);
        double certain = new Student(1e6).quantile(1 - level / 2);
        double sum = first.variance + second.variance + known;
        double blend = first.variance * one + second.variance * other + known * certain;
        return sum == 0 ? 0 : blend / Math.sqrt(sum);
    }

    /** Probability that the true difference lies above a value, every difference beforehand alike (Behrens and Fisher). */
    double above(double value) {
        Part narrow = first.variance < second.variance ? first : second;
        Part wide = first.variance < second.variance ? second : first;
        double over = difference - value;
        if (wide.variance + known == 0) {
            return over > 0 ? 1 : 0;
        }
        return above(over, narrow, new Part(wide.variance + known, wide.freedom));
    }

    /** Integrates over the narrower part, by the arc tangent of its t. */
    private static double above(double over, Part narrow, Part wide) {
        Student inner = new Student(narrow.freedom);
        Student outer = new Student(wide.freedom);
        double sum = 0;
        double weight = 0;
        for (int i = 1; i < POINTS; i++) {
            double t = Math.tan(Math.PI * (i / (double) POINTS - 0.5));
            double density = inner.density(t) * (1 + t * t);
            weight += density;
            sum += density * outer.cumulative((over - Math.sqrt(narrow.variance) * t) / Math.sqrt(wide.variance));
        }
        return sum / weight;
    }
}
