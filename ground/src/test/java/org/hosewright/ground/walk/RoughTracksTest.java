package org.hosewright.ground.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.junit.jupiter.api.Test;

/** Tracks as they come in: standing still, gaps, spikes, times that run backward, long ones. */
class RoughTracksTest {
    private static final Instant START = Instant.parse("2026-05-12T18:00:00Z");
    private static final LocalPlane PLANE = new LocalPlane(SyntheticWalk.SOMEWHERE);
    private static final double NOISE_m = 3;

    /** Share of straight walks whose length lies within its interval [1]. */
    private static final double LEAST_STRAIGHT = 0.87;

    /** Mean error of straight walks, as a share [1]. */
    private static final double MEAN_STRAIGHT = 0.04;

    /** A page stays usable if 10,000 positions are smoothed within this, on a machine that does other work too [ms]. */
    private static final double QUICK_ms = 1500;

    private static Fix fix(double second, double east_m, double north_m) {
        return new Fix(
                PLANE.position(new LocalPlane.Point(east_m, north_m)),
                Optional.of(START.plus(Duration.ofMillis((long) (1000 * second)))),
                Optional.of(new Length(NOISE_m / Model.AXIS_OF_RADIUS)),
                Optional.empty());
    }

    /** Straight east at so much a second, seen by a receiver that wanders by 3 m and forgets it in a minute. */
    private static List<Fix> straight(long seed, int seconds, double speed) {
        SplittableRandom random = new SplittableRandom(seed);
        double keep = Math.exp(-1 / 60.0);
        double fresh = NOISE_m * Math.sqrt(1 - keep * keep);
        double east = NOISE_m * random.nextGaussian();
        double north = NOISE_m * random.nextGaussian();
        List<Fix> fixes = new ArrayList<>();
        for (int i = 0; i < seconds; i++) {
            fixes.add(fix(i, speed * i + east, north));
            east = keep * east + fresh * random.nextGaussian();
            north = keep * north + fresh * random.nextGaussian();
        }
        return fixes;
    }

    private static Walk walk(List<Fix> fixes) {
        return Walk.of(WalkQuestion.of(Track.of("", fixes), Length.ofFeet(50)));
    }

    @Test
    void standingStillIsNoWayHolds() {
        for (long seed = 0; seed < 20; seed++) {
            Walk walk = walk(straight(seed, 300, 0));
            assertThat(walk.distance().value().metres())
                    .as("seed " + seed)
                    .isLessThan(walk.raw().metres() / 4);
            assertThat(walk.remarks()).as("seed " + seed).anyMatch(says -> says.contains("recognised"));
        }
    }

    /** Straight walks are not what the widening was found on: they come out a little long, mostly within the interval. */
    @Test
    void straightWalksHold() {
        int within = 0;
        double mean = 0;
        int walks = 200;
        for (int i = 0; i < walks; i++) {
            Walk walk = walk(straight(1_000_003L * i, 101, 1.2));
            within += walk.shortest().metres() <= 120 && 120 <= walk.longest().metres() ? 1 : 0;
            mean += (walk.distance().value().metres() / 120 - 1) / walks;
        }
        System.out.println("straight: " + within + " of " + walks + " within, mean error " + mean);
        assertThat(within).isGreaterThanOrEqualTo((int) (LEAST_STRAIGHT * walks));
        assertThat(Math.abs(mean)).isLessThan(MEAN_STRAIGHT);
    }

    @Test
    void gapWidensTheIntervalHolds() {
        List<Fix> whole = straight(5, 200, 1.2);
        List<Fix> gap = new ArrayList<>(whole.subList(0, 60));
        gap.addAll(whole.subList(120, 200));
        Walk known = walk(whole);
        Walk torn = walk(gap);
        assertThat(torn.distance().standardErrorSi())
                .isGreaterThan(known.distance().standardErrorSi());
        assertThat(torn.shortest().metres()).isLessThan(1.2 * 199);
        assertThat(torn.longest().metres()).isGreaterThan(1.2 * 199);
        assertThat(torn.remarks()).anyMatch(says -> says.contains("without a position"));
    }

    @Test
    void spikesAreSetAsideHolds() {
        List<Fix> fixes = straight(6, 150, 1.2);
        double plain_m = walk(fixes).distance().value().metres();
        fixes.set(50, fix(50, 60, 400));
        fixes.set(90, fix(90, -300, -50));
        Walk spiked = walk(fixes);
        assertThat(Math.abs(spiked.distance().value().metres() - plain_m)).isLessThan(0.1 * plain_m);
        assertThat(spiked.remarks()).anyMatch(says -> says.contains("2 positions are set aside: too far off"));
    }

    @Test
    void timesThatRunBackwardAreSetAsideHolds() {
        List<Fix> fixes = straight(7, 100, 1.2);
        fixes.add(40, fix(3, 0, 0));
        Walk walk = walk(fixes);
        assertThat(walk.remarks()).anyMatch(says -> says.contains("the time does not run forward"));
    }

    @Test
    void timesThatRunBackwardThroughoutRefused() {
        List<Fix> fixes = straight(8, 100, 1.2);
        java.util.Collections.reverse(fixes);
        assertThatThrownBy(() -> walk(fixes))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("times that run forward");
    }

    @Test
    void longPauseRefused() {
        List<Fix> fixes = straight(9, 60, 1.2);
        fixes.add(fix(60 + 1000, 80, 0));
        assertThatThrownBy(() -> walk(fixes)).isInstanceOf(InvalidInput.class).hasMessageContaining("pause");
    }

    @Test
    void measuredLengthCorrectsTheWalkHolds() {
        Track track = Track.of("", straight(10, 151, 1.2));
        var taped = new MeasuredLength(new Length(180), new Length(0.5), MeasuredLength.By.TAPE, 150);
        WalkQuestion question = WalkQuestion.of(track, Length.ofFeet(50));
        Walk bare = Walk.of(question);
        Walk corrected = Walk.of(question.withMeasured(List.of(taped)));
        assertThat(Math.abs(corrected.distance().value().metres() - 180)).isLessThan(1);
        assertThat(corrected.distance().standardErrorSi())
                .isLessThan(bare.distance().standardErrorSi() / 4);
        WayPoint before = bare.way().get(75);
        WayPoint middle = corrected.way().get(75);
        assertThat(middle.along().standardErrorSi()).isLessThan(before.along().standardErrorSi());
    }

    @Test
    void tenThousandPositionsAreQuickHolds() {
        List<Fix> fixes = straight(11, 10_000, 0.05);
        walk(fixes);
        walk(fixes);
        double best_ms = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            long begin = System.nanoTime();
            walk(fixes);
            best_ms = Math.min(best_ms, (System.nanoTime() - begin) / 1e6);
        }
        System.out.println("10,000 positions in " + best_ms + " ms");
        assertThat(best_ms).isLessThan(QUICK_ms);
    }

    @Test
    void sameTrackSameNumbersHold() {
        List<Fix> fixes = straight(12, 120, 1.1);
        assertThat(walk(fixes)).isEqualTo(walk(fixes));
    }
}
