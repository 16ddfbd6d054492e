package org.hosewright.ground.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.quantity.Length;
import org.junit.jupiter.api.Test;

class WalkTest {
    private static final Length SECTION = Length.ofFeet(50);
    private static final double MILLIMETRE_m = 1e-3;

    /** A right angle, 60 m east and 40 m north, as a person would draw it on a map. */
    private static Track drawn() {
        LocalPlane plane = new LocalPlane(new Position(44.1, -72.6));
        List<Fix> fixes = new ArrayList<>();
        for (double[] point : new double[][] {{0, 0}, {60, 0}, {60, 40}}) {
            fixes.add(Fix.of(plane.position(new LocalPlane.Point(point[0], point[1]))));
        }
        return Track.of("drawn", fixes);
    }

    @Test
    void drawnTrackIsTakenAsDrawnHolds() {
        Walk walk = Walk.of(WalkQuestion.of(drawn(), SECTION));
        assertThat(walk.distance().value().metres()).isCloseTo(100, within(MILLIMETRE_m));
        assertThat(walk.distance().standardError()).isEmpty();
        assertThat(walk.assumed()).anyMatch(says -> says.contains("no times"));
    }

    @Test
    void sectionsEndEverySectionOnTheWayHolds() {
        Walk walk = Walk.of(WalkQuestion.of(drawn(), SECTION));
        assertThat(walk.sections()).hasSize(7);
        SectionMark fifth = walk.sections().get(4);
        assertThat(fifth.place().along().value().feet()).isCloseTo(250, within(0.01));
        SectionMark last = walk.sections().get(6);
        assertThat(last.hose().feet()).isCloseTo(350, within(0.01));
        assertThat(last.spare().metres()).isCloseTo(Length.ofFeet(350).metres() - 100, within(MILLIMETRE_m));
        assertThat(last.place()).isEqualTo(walk.way().get(walk.way().size() - 1));
    }

    /** A drawn way's end, moved along its last leg: whole sections reach just there, to the centimetres of a map. */
    @Test
    void endGoesToWholeSectionsHolds() {
        for (double section_m : new double[] {10, 15, 22, 35, 48, 90, 150}) {
            Walk walk = Walk.of(WalkQuestion.of(drawn(), new Length(section_m)));
            List<Fix> fixes = new ArrayList<>(drawn().fixes());
            fixes.set(2, Fix.of(WholeEnd.of(walk)));
            Walk whole = Walk.of(WalkQuestion.of(Track.of("", fixes), new Length(section_m)));
            double length_m = whole.distance().value().metres();
            assertThat(length_m).as(section_m + " m").isCloseTo(whole.sections().size() * section_m, within(0.03));
            assertThat(length_m).isGreaterThan(60);
        }
    }

    @Test
    void straightLineIsNoLengthOfHoseHolds() {
        Track straight = Track.of("", drawn().fixes().subList(0, 2));
        assertThat(Walk.of(WalkQuestion.of(straight, SECTION)).remarks())
                .anyMatch(says -> says.contains("straight line on a map is no length of hose"));
        assertThat(Walk.of(WalkQuestion.of(drawn(), SECTION)).remarks())
                .noneMatch(says -> says.contains("straight line"));
    }

    @Test
    void safety14RiseByHandIsUpOrDownHolds() {
        Length zero = new Length(0);
        var up = new EnteredRise(EnteredRise.Direction.UP, new Length(6), zero);
        var down = new EnteredRise(EnteredRise.Direction.DOWN, new Length(6), zero);
        WalkQuestion question = WalkQuestion.of(drawn(), SECTION);
        assertThat(Walk.of(question.withRise(up)).rise().up().value().metres()).isEqualTo(6);
        Walk fall = Walk.of(question.withRise(down));
        assertThat(fall.rise().up().value().metres()).isEqualTo(-6);
        assertThat(fall.rise().source()).isEqualTo(RiseSource.BY_HAND);
        assertThat(fall.way().get(1).height().metres()).isCloseTo(-3.6, within(MILLIMETRE_m));
    }
}
