package org.hosewright.ground.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A thousand walks of known length, seen by receivers that wander by 3 to 15 m and forget it in half a minute to two. */
class SyntheticWalksTest {
    private static final int WALKS = 1000;
    private static final long SEED = 77;
    private static final double LEAST_NOISE_m = 3;
    private static final double MOST_NOISE_m = 15;

    /** Of the true lengths within their 95 % interval: what people may rely on [1]. */
    private static final double LEAST_COVERED = 0.90;

    private static final double MOST_COVERED = 0.99;

    /** Mean error, as a share of the length [1]. */
    private static final double BIAS = 0.01;

    /** Mean error where the receiver misjudges its own accuracy by two fifths, as a share of the length [1]. */
    private static final double BIAS_MISJUDGED = 0.05;

    /** What the usual ways of summing take: one position in so many seconds. */
    private static final int[] DECIMATED_s = {5, 10, 20, 30};

    @Test
    void lengthsOfSyntheticWalksHold() {
        Errors errors = errors(SEED, 1);
        assertThat(errors.covered()).as("share covered").isBetween(LEAST_COVERED, MOST_COVERED);
        assertThat(Math.abs(errors.bias())).as("mean error").isLessThan(BIAS);
        assertThat(errors.spread()).isLessThan(errors.rawSpread());
        for (int i = 0; i < DECIMATED_s.length; i++) {
            assertThat(errors.spread()).as("every " + DECIMATED_s[i] + " s").isLessThan(errors.decimatedSpread(i));
        }
    }

    @Test
    @Tag("long")
    void lengthsWithOtherSeedsHold() {
        for (long seed = 1; seed <= 5; seed++) {
            Errors errors = errors(1000 * seed, 1);
            assertThat(errors.covered()).as("share covered, seed " + seed).isBetween(LEAST_COVERED, MOST_COVERED);
            assertThat(Math.abs(errors.bias())).as("mean error, seed " + seed).isLessThan(BIAS);
        }
    }

    @Test
    @Tag("long")
    void lengthsWithMisjudgedAccuracyHold() {
        for (double misjudged : new double[] {0.7, 1.4}) {
            Errors errors = errors(SEED, misjudged);
            assertThat(errors.covered()).as("share covered").isGreaterThan(0.88);
            assertThat(Math.abs(errors.bias())).as("mean error").isLessThan(BIAS_MISJUDGED);
        }
    }

    private static Errors errors(long seed, double misjudged) {
        Errors errors = new Errors();
        SplittableRandom noises = new SplittableRandom(seed);
        for (int i = 0; i < WALKS; i++) {
            double noise_m = LEAST_NOISE_m + (MOST_NOISE_m - LEAST_NOISE_m) * noises.nextDouble();
            SyntheticWalk made = new SyntheticWalk(seed + 1000L * i, noise_m);
            errors.add(made, Walk.of(WalkQuestion.of(made.track(misjudged), Length.ofFeet(50))));
        }
        System.out.println("seed " + seed + ", accuracy stated times " + misjudged + ": " + errors);
        return errors;
    }

    /** Errors of lengths as shares of the true ones. */
    private static final class Errors {
        private int count;
        private int within;
        private double sum;
        private double squares;
        private double raw;
        private final double[] decimated = new double[DECIMATED_s.length];

        void add(SyntheticWalk made, Walk walk) {
            double error = walk.distance().value().metres() / made.length_m - 1;
            count++;
            sum += error;
            squares += error * error;
            boolean low = walk.shortest().metres() <= made.length_m;
            within += low && made.length_m <= walk.longest().metres() ? 1 : 0;
            raw += square(walk.raw().metres() / made.length_m - 1);
            for (int i = 0; i < decimated.length; i++) {
                decimated[i] += square(made.decimated_m(DECIMATED_s[i]) / made.length_m - 1);
            }
        }

        private static double square(double value) {
            return value * value;
        }

        double bias() {
            return sum / count;
        }

        double covered() {
            return (double) within / count;
        }

        double spread() {
            return Math.sqrt(squares / count);
        }

        double rawSpread() {
            return Math.sqrt(raw / count);
        }

        double decimatedSpread(int i) {
            return Math.sqrt(decimated[i] / count);
        }

        @Override
        public String toString() {
            StringBuilder says = new StringBuilder();
            says.append("covered ").append(share(covered())).append(", bias ").append(share(bias()));
            says.append(", spread ").append(share(spread())).append(", raw ").append(share(rawSpread()));
            for (int i = 0; i < decimated.length; i++) {
                says.append(", every ").append(DECIMATED_s[i]).append(" s ").append(share(decimatedSpread(i)));
            }
            return says.toString();
        }

        private static String share(double value) {
            return Numbers.fixed(100 * value, 2) + " %";
        }
    }
}
