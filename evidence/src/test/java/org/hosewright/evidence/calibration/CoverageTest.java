package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Intervals mean what they say: over nights with the truth drawn from the stated priors, 95 % intervals hold it in 95 %. */
class CoverageTest {
    private static final long FIRST_SEED = 20_260_512;

    /** Below so many stated intervals a share says little: its own standard error would pass 1.5 %. */
    private static final int ENOUGH = 200;

    /** Hose and piping together hold the truth in 92 % (measured over 1000 nights): the piping's belief is cut off at 0, which
     * makes its outer contours no ellipse.
     */
    private static final double LEAST_JOINTLY = 0.9;

    /** How far, in the root of the mean square, a class of ranks may hold more or less than its share beyond chance. */
    private static final double MOST_UNEVEN = 0.15;

    /** A reading of a clean night may be accused this often. */
    private static final double MOST_ACCUSED = 0.02;

    /** Nights whose drawn scatter is so large that they are refused or make no sense. */
    private static final double MOST_LOST = 0.01;

    @Test
    void intervalsOfAThousandNightsHold() {
        check(1000, 0.925, 0.975);
    }

    @Test
    @Tag("long")
    void intervalsOfFourThousandNightsHold() {
        check(4000, 0.935, 0.965);
    }

    @Test
    @Tag("long")
    void intervalsOfFourThousandWellEquippedNightsHold() {
        check(4000, 0.935, 0.965, Truth::wellEquipped);
    }

    private static void check(int nights, double least, double most) {
        check(nights, least, most, Truth::new);
    }

    private static void check(int nights, double least, double most, LongFunction<Truth> draw) {
        Coverage coverage = new Coverage();
        LongStream.range(FIRST_SEED, FIRST_SEED + nights)
                .parallel()
                .mapToObj(draw)
                .forEach(coverage::add);
        System.out.println("first seed " + FIRST_SEED + ", nights " + coverage.nights + ", refused " + coverage.refused
                + ", senseless " + coverage.senseless + ", accused " + coverage.accused + " of " + coverage.readings);
        coverage.counts.forEach((what, count) -> System.out.println(what + ": " + count));
        assertThat(coverage.nights).isEqualTo(nights);
        assertThat(coverage.refused + coverage.senseless).isLessThan((int) (MOST_LOST * nights));
        assertThat(coverage.accused).isLessThan((int) (MOST_ACCUSED * coverage.readings));
        assertThat(coverage.counts.values().stream().filter(count -> count.stated >= ENOUGH))
                .hasSizeGreaterThanOrEqualTo(7);
        double jointly = (double) coverage.within / coverage.together;
        System.out.println("hose and piping together: " + jointly + " of " + coverage.together);
        assertThat(jointly).isBetween(LEAST_JOINTLY, most);
        coverage.counts.forEach((what, count) -> {
            if (count.stated >= ENOUGH) {
                assertThat(count.share()).as(what + ": " + count).isBetween(least, most);
                double uneven = Math.sqrt(Math.max(0, count.roughness() - (Coverage.RANKS - 1)) / count.stated);
                assertThat(uneven).as(what + ": " + count).isLessThan(MOST_UNEVEN);
            }
        });
    }
}
