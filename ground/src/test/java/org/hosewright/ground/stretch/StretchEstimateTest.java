package org.hosewright.ground.stretch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Known;
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

    /** source: none; common practice, from memory: twice the rule of a house for several families or a shop. */
    @Test
    void quickRuleForABlockMatchesPractice() {
        StretchEstimate block = estimate(
                List.of(part(PartKind.TO_DOOR, 100), part(PartKind.WORKING, 100)),
                Optional.of(new Stairs(2, new StairRule.OwnLength(Length.ofFeet(100)))),
                0);
        assertThat(block.sections()).isEqualTo(2 * 4);
    }

    /** source: none; common practice, from memory: 50 ft to work with at the fire area, one section of it. */
    @Test
    void workingLengthMatchesPractice() {
        int without = estimate(List.of(part(PartKind.TO_DOOR, 150)), Optional.empty(), 0)
                .sections();
        StretchEstimate with =
                estimate(List.of(part(PartKind.TO_DOOR, 150), part(PartKind.WORKING, 50)), Optional.empty(), 0);
        assertThat(with.sections()).isEqualTo(without + 1);
        assertThat(with.assumed()).noneMatch(says -> says.contains("working length"));
    }

    /** source: Fire Rescue Magazine, 2018: straight and scissor runs take part of a length; 25 ft a floor is an example. */
    @Test
    void straightRunsTakePartOfASectionMatchesPublished() {
        StairRule own = new StairRule.OwnLength(Length.ofFeet(25));
        assertThat(own.hose(3, SECTION).feet()).isCloseTo(75, within(0.01));
        List<StretchPart> parts = List.of(part(PartKind.TO_DOOR, 75));
        assertThat(estimate(parts, Optional.of(new Stairs(3, own)), 0).sections())
                .isEqualTo(3);
        assertThatThrownBy(() -> own.hose(-1, SECTION)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new StairRule.OwnLength(new Length(0))).isInstanceOf(InvalidInput.class);
    }

    /** source: US Navy firefighting handbook: bands of access to 180, to 230 and above 230 ft of lay measured over the
     * terrain, 30 ft of stream among them: 3, 4 and more sections of 50 ft. */
    @Test
    void accessBandsMatchesPublished() {
        double stream_ft = 30;
        int[] sections = {3, 4, 5};
        double[] lay_ft = {180, 230, 231};
        for (int i = 0; i < lay_ft.length; i++) {
            var ground = List.of(part(PartKind.TO_DOOR, lay_ft[i] - stream_ft));
            assertThat(estimate(ground, Optional.empty(), 0).sections())
                    .as(lay_ft[i] + " ft")
                    .isEqualTo(sections[i]);
        }
    }

    /** source: notes on lengths by eye, third hand: street poles stand 75 to 100 ft apart. Two spans so counted are known
     * that badly, and the range says so. */
    @Test
    void countedPolesWidenTheRangeMatchesPublished() {
        Known<Length> spans = Known.of(Length.ofFeet(2 * 87.5), Length.ofFeet(2 * 12.5));
        var counted = List.of(new StretchPart(PartKind.TO_DOOR, spans, "two spans of poles"));
        StretchEstimate byPoles = estimate(counted, Optional.empty(), 0);
        StretchEstimate taped = estimate(List.of(part(PartKind.TO_DOOR, 175)), Optional.empty(), 0);
        assertThat(byPoles.sections()).isEqualTo(taped.sections()).isEqualTo(4);
        assertThat(byPoles.needed().standardErrorSi())
                .isGreaterThan(taped.needed().standardErrorSi());
        assertThat(byPoles.most()).isGreaterThanOrEqualTo(taped.most());
        assertThat(byPoles.fewest()).isLessThanOrEqualTo(taped.fewest());
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
        StretchRecord long20 = StretchRecord.of(Length.ofFeet(100), Length.ofFeet(120));
        StretchFactor one = StretchFactor.of(List.of(long20));
        StretchFactor many = StretchFactor.of(java.util.Collections.nCopies(40, long20));
        assertThat(one.median()).isBetween(1.05, 1.19);
        assertThat(many.median()).isBetween(1.18, 1.2);
        assertThat(many.logError()).isLessThan(one.logError());
        assertThat(StretchFactor.UNLEARNT.median()).isCloseTo(1, within(ROUNDED));
    }

    /** A stretch against a poorly known plan says less, and its error is not taken for the company's own scatter. */
    @Test
    void poorlyMeasuredStretchSaysLessHolds() {
        StretchRecord taped = StretchRecord.of(Length.ofFeet(100), Length.ofFeet(130));
        StretchRecord guessed = new StretchRecord(Length.ofFeet(100), Length.ofFeet(130), 0.3);
        StretchFactor known = StretchFactor.of(List.of(taped, taped));
        StretchFactor vague = StretchFactor.of(List.of(guessed, guessed));
        assertThat(vague.median()).isBetween(1.0, known.median());
        assertThat(vague.logError()).isGreaterThan(known.logError());
        StretchRecord off = new StretchRecord(Length.ofFeet(100), Length.ofFeet(75), 0.3);
        double apart = StretchFactor.of(List.of(guessed, off)).logSpread();
        assertThat(apart)
                .isLessThan(StretchFactor.of(List.of(taped, StretchRecord.of(Length.ofFeet(100), Length.ofFeet(75))))
                        .logSpread());
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
                records.add(StretchRecord.of(new Length(50), new Length(50 * next(own, random))));
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
