package org.hosewright.ledger.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.HeightOrigin;
import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.walk.Walk;
import org.hosewright.ground.walk.WalkQuestion;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.BrindleFalls;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.reach.ReachAnalysis;
import org.junit.jupiter.api.Test;

class WalkReportTest {
    private static final Length SECTION = Length.ofFeet(50);

    /** What the kit keeps back [ft]. */
    private static final double RESERVE_ft = 50;

    /** Pressures that are sums in another order [Pa]. */
    private static final double SAME_Pa = 1e-3;

    private static Kit kit() {
        return BrindleFalls.kit(Optional.empty(), 0, 150);
    }

    private static String id(Kit kit) {
        return kit.packages().keySet().iterator().next();
    }

    /** Straight east, drawn with a position every metre and a height at each. */
    private static Walk walk(int length_m, java.util.function.IntToDoubleFunction height_m) {
        LocalPlane plane = new LocalPlane(new Position(42.5, -68.5));
        List<Fix> fixes = new ArrayList<>();
        for (int i = 0; i <= length_m; i++) {
            Fix bare = Fix.of(plane.position(new LocalPlane.Point(i, 0)));
            fixes.add(bare.withElevation(Optional.of(new Length(height_m.applyAsDouble(i)))));
        }
        Track track = Track.of("", fixes).withHeights(HeightOrigin.BAROMETER);
        return Walk.of(WalkQuestion.of(track, SECTION));
    }

    private static WalkReport report(Walk walk) {
        return WalkReport.of(walk, kit(), id(kit()), Optional.of(BrindleFalls.TODAY));
    }

    @Test
    void safety15LongestSafeEndsBeforeTheFirstMarkThatBreaksHolds() {
        WalkReport report = report(walk(400, i -> 0));
        int last = 0;
        for (SectionThere there : report.sections()) {
            boolean safe = there.line().isPresent() && there.line().get().isSafe();
            last = safe && last == there.mark().section() - 1 ? there.mark().section() : last;
        }
        assertThat(last).isBetween(1, report.sections().size() - 1);
        assertThat(report.longestSafe().orElseThrow().feet()).isCloseTo(50.0 * last - RESERVE_ft, within(1e-6));
        assertThat(report.stoppedBy()).isPresent();
        assertThat(report.cautions()).anyMatch(says -> says.contains("laid straight, no kinks"));
        assertThat(report.cautions()).anyMatch(says -> says.contains("no length of hose"));
        assertThat(report.cautions()).anyMatch(says -> says.contains("no verified water supply"));
    }

    @Test
    void safety15LevelWalkAgainstReachAgrees() {
        Kit kit = kit();
        var question = new ReachAnalysis.Question(new Length(0), Optional.empty(), Optional.of(BrindleFalls.TODAY));
        Length safe = ReachAnalysis.of(kit, question).packages().get(0).result().longestSafe();
        Length walked = report(walk(400, i -> 0)).longestSafe().orElseThrow();
        assertThat(walked.feet()).isBetween(safe.feet() - RESERVE_ft - 50.1, safe.feet() - RESERVE_ft + 0.1);
    }

    @Test
    void safety17RiseAddsAndFallTakesAwayHolds() {
        WalkReport level = report(walk(60, i -> 0));
        WalkReport up = report(walk(60, i -> i / 10.0));
        WalkReport down = report(walk(60, i -> -i / 10.0));
        int last = level.sections().size() - 1;
        double lift_Pa = Constants.WATER_PA_PER_M * 6;
        assertThat(pump_Pa(up, last)).isCloseTo(pump_Pa(level, last) + lift_Pa, within(SAME_Pa));
        assertThat(pump_Pa(down, last)).isCloseTo(pump_Pa(level, last) - lift_Pa, within(SAME_Pa));
    }

    /** Safety 1: the lowest point of the way, not its end, sees the most with the nozzle shut. */
    @Test
    void safety01HoseInADipIsCheckedAtItsLowestPointHolds() {
        WalkReport level = report(walk(60, i -> 0));
        WalkReport dip = report(walk(60, i -> -120 + 120 * Math.abs(i - 30) / 30.0));
        int last = level.sections().size() - 1;
        assertThat(pump_Pa(dip, last)).isCloseTo(pump_Pa(level, last), within(5 * Constants.WATER_PA_PER_M));
        var first = dip.sections().get(last).line().orElseThrow().first().orElseThrow();
        assertThat(first.what()).contains("nozzle shut");
        assertThat(first.broken()).isTrue();
        assertThat(dip.sections().get(last).line().orElseThrow().isSafe()).isFalse();
    }

    /** Safety 1: what is ordered is judged too, where it is more than what is needed. */
    @Test
    void safety01OrderedPressureIsHeldToTheLimitsHolds() {
        Walk walk = walk(30, i -> 0);
        Optional<java.time.LocalDate> today = Optional.of(BrindleFalls.TODAY);
        WalkReport needed = report(walk);
        assertThat(needed.sections().get(1).line().orElseThrow().isSafe()).isTrue();
        OrderedFigures tooMuch = hose -> Optional.of(Pressure.ofPsi(320));
        WalkReport ordered = WalkReport.of(walk, kit(), id(kit()), tooMuch, today);
        var there = ordered.sections().get(1).line().orElseThrow();
        assertThat(there.ordered()).contains(Pressure.ofPsi(320));
        assertThat(there.isBrokenAsOrdered()).isTrue();
        assertThat(there.tightest()).isEqualTo(there.asOrdered());
        assertThat(there.isSafe()).as("at what it needs").isTrue();
        assertThat(ordered.longestSafe()).isEqualTo(needed.longestSafe());
        OrderedFigures little = hose -> Optional.of(Pressure.ofPsi(40));
        WalkReport less = WalkReport.of(walk, kit(), id(kit()), little, today);
        assertThat(less.sections().get(1).line().orElseThrow().tightest())
                .isEqualTo(needed.sections().get(1).line().orElseThrow().first());
    }

    @Test
    void errorOfTheRiseIsCountedHolds() {
        WalkReport report = report(walk(60, i -> 0));
        double error_Pa = report.sections().get(0).line().orElseThrow().pump().standardErrorSi();
        double ofRise_Pa = Constants.WATER_PA_PER_M * report.walk().rise().up().standardErrorSi();
        assertThat(ofRise_Pa).isPositive();
        assertThat(error_Pa).isGreaterThanOrEqualTo(ofRise_Pa * (1 - 1e-9));
    }

    @Test
    void unknownPackageRefused() {
        Walk walk = walk(60, i -> 0);
        assertThatThrownBy(() -> WalkReport.of(walk, kit(), "no-such", Optional.empty()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(id(kit()));
    }

    private static double pump_Pa(WalkReport report, int section) {
        return report.sections()
                .get(section)
                .line()
                .orElseThrow()
                .pump()
                .value()
                .pascals();
    }
}
