package org.hosewright.evidence.probability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;

/** Student's law against an independent library. */
class StudentTest {
    private static final List<Double> FREEDOMS = List.of(1.0, 1.5, 2.0, 3.7, 8.0, 29.4, 120.0, 5000.0);

    /** Probabilities agree to so much; far below any that a verdict turns on. */
    private static final double PROBABILITY = 1e-10;

    /** Quantiles agree to this share. */
    private static final double SHARE = 1e-8;

    /** The integral over the estimated deviation is good to so much. */
    private static final double INTEGRATED = 1e-6;

    @Test
    void cumulativeAgrees() {
        for (double freedom : FREEDOMS) {
            for (double t = -6; t <= 6; t += 0.37) {
                assertThat(new Student(freedom).cumulative(t))
                        .as(freedom + " at " + t)
                        .isCloseTo(new TDistribution(freedom).cumulativeProbability(t), within(PROBABILITY));
            }
        }
    }

    @Test
    void quantileAgrees() {
        for (double freedom : FREEDOMS) {
            for (double p : List.of(0.6, 0.9, 0.975, 0.995, 0.9999)) {
                double reference = new TDistribution(freedom).inverseCumulativeProbability(p);
                assertThat(new Student(freedom).quantile(p)).isCloseTo(reference, within(SHARE * reference));
                assertThat(new Student(freedom).quantile(1 - p)).isCloseTo(-reference, within(SHARE * reference));
            }
        }
    }

    /** Where the true value lies at 0, passing a bound is Student's own tail. */
    @Test
    void centralCaseOfTheNoncentralLawAgrees() {
        for (double freedom : List.of(2.0, 4.0, 10.0, 60.0)) {
            for (double bound : List.of(0.5, 2.0, 3.5)) {
                double tail = 1 - new TDistribution(freedom).cumulativeProbability(bound);
                assertThat(new Student(freedom).passes(bound, 0)).isCloseTo(tail, within(INTEGRATED));
            }
        }
    }

    @Test
    void normalLawAgrees() {
        NormalDistribution reference = new NormalDistribution();
        for (double x = -7; x <= 7; x += 0.31) {
            assertThat(Normal.cumulative(x)).isCloseTo(reference.cumulativeProbability(x), within(1e-13));
        }
    }
}
