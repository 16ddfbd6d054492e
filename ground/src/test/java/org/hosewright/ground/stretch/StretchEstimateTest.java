package org.hosewright.ground.stretch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.junit.jupiter.api.Test;

class StretchEstimateTest {
    private static final Length SECTION = Length.ofFeet(50);

    /** Shares that are sums of rounded tenths [1]. */
    private static final double ROUNDED = 1e-9;

    private static StretchPart part(PartKind kind, double feet) {
        return StretchPart.of(kind, Length.ofFeet(feet));
    }

    private static StretchEstimate estimate(List<StretchPart> parts, Optional<Stairs> stairs, int reserve) {
        return StretchEstimate.of(new StretchPlan(SECTION, parts, stairs, Slack.NONE, reserve), Optional.empty());
    }

    /** source: the trade's worked case of a garden apartment: tailboard to door 145 ft, courtyard 165, lobby and hall 40, two
     * flights of stairs, cover 60: 510 ft, 11 lengths and 1 in reserve, 600 ft. */
    @Test
    void gardenApartmentMatchesPublished() {
        StretchEstimate found = estimate(
                List.of(
                        part(PartKind.TO_DOOR, 145),
                        part(PartKind.TO_DOOR, 165),
                        part(PartKind.INSIDE, 40),
                        part(PartKind.COVER, 60)),
                Optional.of(new Stairs(2, TaughtStairs.SECTION_A_FLIGHT)),
                1);
        assertThat(found.needed().value().feet()).isCloseTo(510, within(0.01));
        assertThat(found.sections()).isEqualTo(12);
        assertThat(found.hose().feet()).isCloseTo(600, within(0.01));
        assertThat(found.fewest()).isLessThan(12);
        assertThat(found.most()).isGreaterThan(12);
    }

    /** source: Fire Rescue Magazine, 2018: rig to door, inside travel, fire area, always up to whole 50-ft lengths. */
    @Test
    void alwaysUpToWholeSectionsMatchesPublished() {
        assertThat(estimate(List.of(part(PartKind.TO_DOOR, 101)), Optional.empty(), 0)
                        .sections())
                .isEqualTo(3);
        assertThat(estimate(List.of(part(PartKind.TO_DOOR, 100)), Optional.empty(), 0)
                        .sections())
                .isEqualTo(2);
    }

    /** source: Traditions Training: cover is length and width of the area; taped by a crew in a town house of 16 by 30 ft:
     * rig to door 100 ft, far corner of the basement 50 ft, three lengths called adequate. */
    @Test
    void townHouseMatchesPublished() {
        assertThat(StretchPlan.cover(Length.ofFeet(16), Length.ofFeet(30)).feet())
                .isCloseTo(46, within(0.01));
        StretchEstimate taped =
                estimate(List.of(part(PartKind.TO_DOOR, 100), part(PartKind.COVER, 46)), Optional.empty(), 0);
        assertThat(taped.sections()).isEqualTo(3);
    }

    /** source: Fire Rescue Magazine, 2018 (a length a flight of return stairs); crews on a forum (one for two floors at the
     * least; a well-hole's one for about five floors). */
    @Test
    void stairRulesMatchesPublished() {
        assertThat(TaughtStairs.SECTION_A_FLIGHT.sections(4)).isEqualTo(4);
        assertThat(TaughtStairs.SECTION_FOR_TWO_FLOORS.sections(4)).isEqualTo(2);
        assertThat(TaughtStairs.SECTION_FOR_TWO_FLOORS.sections(5)).isEqualTo(3);
        assertThat(TaughtStairs.WELL_HOLE.sections(5)).isEqualTo(1);
        assertThat(TaughtStairs.WELL_HOLE.sections(6)).isEqualTo(2);
        assertThat(TaughtStairs.WELL_HOLE.sections(0)).isEqualTo(0);
    }

    /** source: none; common practice for a house: 50 ft for the yard and 50 for every floor, twice that for a block. */
    @Test
    void quickHouseRuleMatchesPractice() {
        StretchEstimate house = estimate(
                List.of(part(PartKind.TO_DOOR, 50), part(PartKind.WORKING, 50)),
                Optional.of(new Stairs(1, TaughtStairs.SECTION_A_FLIGHT)),
                0);
        assertThat(house.sections()).isEqualTo(3);
    }

    @Test
    void noStairRuleIsBuiltInHolds() {
        assertThatThrownBy(() -> new Stairs(-1, TaughtStairs.WELL_HOLE)).isInstanceOf(InvalidInput.class);
        List<StretchPart> parts = List.of(part(PartKind.TO_DOOR, 100));
        int none = estimate(parts, Optional.empty(), 0).sections();
        int flight = estimate(parts, Optional.of(new Stairs(5, TaughtStairs.SECTION_A_FLIGHT)), 0)
                .sections();
        int well = estimate(parts, Optional.of(new Stairs(5, TaughtStairs.WELL_HOLE)), 0)
                .sections();
        assertThat(List.of(none, flight, well)).containsExactly(2, 7, 3);
    }

    @Test
    void slackForCornersAndObstaclesIsCountedHolds() {
        Slack slack = new Slack(3, Length.ofFeet(3), 1, Length.ofFeet(15));
        StretchPlan plan = new StretchPlan(SECTION, List.of(part(PartKind.TO_DOOR, 80)), Optional.empty(), slack, 0);
        StretchEstimate found = StretchEstimate.of(plan, Optional.empty());
        assertThat(found.needed().value().feet()).isCloseTo(104, within(0.01));
        assertThat(found.sections()).isEqualTo(3);
    }

    @Test
    void factorIsDrawnTowardOneWhileStretchesAreFewHolds() {
        StretchRecord long20 = new StretchRecord(Length.ofFeet(100), Length.ofFeet(120));
        StretchFactor one = StretchFactor.of(List.of(long20));
        StretchFactor many = StretchFactor.of(java.util.Collections.nCopies(40, long20));
        assertThat(one.median()).isBetween(1.05, 1.19);
        assertThat(many.median()).isBetween(1.18, 1.2);
        assertThat(many.logError()).isLessThan(one.logError());
        assertThat(StretchFactor.UNLEARNT.median()).isCloseTo(1, within(ROUNDED));
    }

    /** Companies drawn as the prior says: the next stretch lies within the range of 95 in a hundred. */
    @Test
    void nextStretchWithinItsRangeHolds() {
        SplittableRandom random = new SplittableRandom(20_260_601);
        int within = 0;
        int companies = 4000;
        for (int i = 0; i < companies; i++) {
            double own = StretchFactor.BETWEEN * random.nextGaussian();
            List<StretchRecord> records = new ArrayList<>();
            int count = random.nextInt(15);
            for (int k = 0; k < count; k++) {
                records.add(new StretchRecord(new Length(50), new Length(50 * next(own, random))));
            }
            StretchFactor factor = StretchFactor.of(records);
            double off = Math.log(next(own, random) / factor.median());
            within += Math.abs(off) <= 1.96 * factor.logSpread() ? 1 : 0;
        }
        double share = (double) within / companies;
        System.out.println("next stretch within its range: " + share + " of " + companies + ", seed 20260601");
        assertThat(share).isBetween(0.93, 0.97);
    }

    private static double next(double own, SplittableRandom random) {
        return Math.exp(own + StretchFactor.WITHIN * random.nextGaussian());
    }
}
