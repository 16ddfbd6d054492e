package org.hosewright.hydraulics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.ExampleLines;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.RandomLines;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReachTest {
    private static final long SEED = 20260514;
    private static final Bounds PUMP_1500 =
            Bounds.NONE.withPump(Optional.of(Pressure.ofPsi(250)), Optional.of(Flow.ofGpm(1500)));

    /** The examples' expected numbers, exact. */
    @ParameterizedTest
    @CsvSource({"200,0,600", "225,0,700", "250,0,800", "200,20,550", "225,20,650", "250,20,750"})
    void gardenCourtExpectedNumbersHold(double ceiling_psi, double rise_ft, double longest_ft) {
        Bounds bounds =
                PUMP_1500.withCeiling(Pressure.ofPsi(ceiling_psi)).withCrew(Optional.of(new Crew(2, Force.ofLbf(75))));
        ReachResult result = Reach.longest(ExampleLines.crosslay(200, rise_ft), LossErrors.UNCORRELATED, bounds);
        assertThat(result.longest().feet()).isCloseTo(longest_ft, within(1e-9));
        assertThat(result.sections()).isEqualTo((int) longest_ft / 50);
        assertThat(result.stop().kind()).isEqualTo(LimitKind.CEILING);
        assertThat(result.mostPump().orElseThrow().psi()).isCloseTo(ceiling_psi, within(1e-9));
        assertThat(result.longestSafe()).isEqualTo(result.longest());
    }

    /** The examples' expected numbers, exact: 7 sections of 25 m under 1,000 kPa, the nozzle 8 m up. */
    @Test
    void valeExpectedNumbersHold() {
        Bounds bounds =
                Bounds.NONE.withPump(Optional.of(Pressure.ofKPa(1000)), Optional.of(Flow.ofLitresPerMinute(3000)));
        ReachResult result = Reach.longest(ExampleLines.delivery(75, 8), LossErrors.UNCORRELATED, bounds);
        assertThat(result.longest().metres()).isCloseTo(175, within(1e-9));
        assertThat(result.sections()).isEqualTo(7);
    }

    @Test
    void whatStopsTheLineIsWhatItMeetsFirstHolds() {
        Line line = ExampleLines.crosslay(200, 0);
        Bounds high = PUMP_1500.withCeiling(Pressure.ofPsi(300));
        ReachResult hose = Reach.longest(line, LossErrors.UNCORRELATED, high);
        assertThat(hose.stop().kind()).isEqualTo(LimitKind.HOSE);
        // (270 - 50 - 5.33) / 23.76 = 9.03
        assertThat(hose.longest().feet()).isCloseTo(900, within(1e-9));
        ReachResult pump = Reach.longest(
                line, LossErrors.UNCORRELATED, high.withPump(Optional.empty(), Optional.of(Flow.ofGpm(250))));
        // 160.8 of 250 gpm is 64.3 %: 150 psi + ... = 214 psi, (214 - 55.33) / 23.76 = 6.68
        assertThat(pump.stop().kind()).isEqualTo(LimitKind.PUMP);
        assertThat(pump.longest().feet()).isCloseTo(650, within(1e-9));
    }

    @Test
    void ofTwoLimitsThatOneSectionBreaksTheLowerOneStopsTheLineHolds() {
        // 14 sections need 221.6 psi, 15 need 233.5; the hose allows 0.9 x 250 = 225.
        Hose attack = ExampleLines.ATTACK;
        Hose tested = new Hose(
                attack.id(), attack.diameter(), attack.section(), attack.loss(), Optional.of(Pressure.ofPsi(250)));
        Line line = ExampleLines.crosslay(tested, ExampleLines.CROSSLAY, ExampleLines.SEVEN_EIGHTHS, 200, 0);
        assertThat(stopUnder(line, 224)).isEqualTo(LimitKind.CEILING);
        assertThat(stopUnder(line, 226)).isEqualTo(LimitKind.HOSE);
    }

    private static LimitKind stopUnder(Line line, double ceiling_psi) {
        Bounds bounds = Bounds.NONE.withCeiling(Pressure.ofPsi(ceiling_psi));
        return Reach.longest(line, LossErrors.UNCORRELATED, bounds).stop().kind();
    }

    @Test
    void limitsThatLengthDoesNotChangeStopTheLineAtOnceHolds() {
        Bounds weak = PUMP_1500.withCrew(Optional.of(new Crew(1, Force.ofLbf(60))));
        ReachResult result = Reach.longest(ExampleLines.crosslay(200, 0), LossErrors.UNCORRELATED, weak);
        assertThat(result.longest().metres()).isZero();
        assertThat(result.sections()).isZero();
        assertThat(result.longestSafe().metres()).isZero();
        assertThat(result.stoppedBy()).isEqualTo("the reaction for a crew of 1");
        assertThat(result.mostPump()).isEmpty();
        ReachResult dry = Reach.longest(
                ExampleLines.crosslay(200, 0),
                LossErrors.UNCORRELATED,
                PUMP_1500.withSupply(Optional.of(Flow.ofGpm(150))));
        assertThat(dry.stop().kind()).isEqualTo(LimitKind.SUPPLY);
    }

    @Test
    void safety01FallOfTheGroundShortensTheLineWhereHoseStopsIt() {
        // Level the hose stops at 270 psi; 100 ft downhill at 270 - 43.4, but the line needs 43.4 psi less as well.
        Bounds high = PUMP_1500.withCeiling(Pressure.ofPsi(400));
        ReachResult level = Reach.longest(ExampleLines.crosslay(200, 0), LossErrors.UNCORRELATED, high);
        ReachResult down = Reach.longest(ExampleLines.crosslay(200, -100), LossErrors.UNCORRELATED, high);
        assertThat(down.longest()).isEqualTo(level.longest());
        assertThat(down.mostPump().orElseThrow().psi()).isCloseTo(270 - 43.4, within(1e-9));
    }

    @Test
    void safety15LongestSafeHoldsWithErrorsAndCorrelation() {
        Bounds bounds = PUMP_1500.withCeiling(Pressure.ofPsi(225));
        ReachResult result = Reach.longest(ExampleLines.measured(200, 0), ExampleLines.measuredErrors(), bounds);
        // By hand at 700 ft: 221.6 + 1.645 x 2.585 sqrt(1.47^2 + 1 - 1.6 x 1.47) = 225.6, above 225.
        assertThat(result.longest().feet()).isCloseTo(700, within(1e-9));
        assertThat(result.longestSafe().feet()).isCloseTo(650, within(1e-9));
        ReachResult independent = Reach.longest(ExampleLines.measured(200, 0), LossErrors.UNCORRELATED, bounds);
        assertThat(independent.longestSafe().feet()).isLessThanOrEqualTo(650);
        assertThat(independent.assumed()).isNotEmpty();
        assertThat(result.assumed()).isEmpty();
    }

    /** Drawn hoses and piping: at the safe length the needed pressure stays below the ceiling in 95 % of them. */
    @Test
    void safety15LongestSafeAgreesWithDrawnLosses() {
        Line line = ExampleLines.measured(200, 0);
        RandomLines random = new RandomLines(SEED);
        double ceiling_psi = needed(650, 9.19, 2.06) + 1.645 * 2.5853 * Math.sqrt(1.365 * 1.365 + 1 - 1.6 * 1.365);
        ReachResult just = longest(line, ceiling_psi + 0.01);
        ReachResult justNot = longest(line, ceiling_psi - 0.01);
        assertThat(just.longestSafe().feet()).isCloseTo(650, within(1e-9));
        assertThat(justNot.longestSafe().feet()).isCloseTo(600, within(1e-9));
        int draws = 20_000;
        int above = 0;
        for (int i = 0; i < draws; i++) {
            double one = random.gaussian();
            double other = -0.8 * one + 0.6 * random.gaussian();
            above += needed(650, 9.19 + 0.21 * one, 2.06 + other) > ceiling_psi ? 1 : 0;
        }
        // Standard deviation of the share: sqrt(0.05 x 0.95 / 20,000) = 0.15 %; the band is four of them.
        assertThat(above / (double) draws).as("seed %d", SEED).isCloseTo(0.05, within(0.006));
    }

    @Test
    void longestHoldsAndOneMoreSectionBreaksHolds() {
        RandomLines random = new RandomLines(SEED);
        for (int i = 0; i < 300; i++) {
            Line line = random.any();
            LossErrors errors = random.errors(line);
            Bounds bounds = PUMP_1500.withCeiling(Pressure.ofPsi(random.between(60, 300)));
            ReachResult result = Reach.longest(line, errors, bounds);
            double others_m = line.length().metres() - line.last().length().metres();
            double section_m = line.last().hose().section().metres();
            double last_m = Math.max(0, result.longest().metres() - others_m);
            String as = "seed " + SEED + " case " + i;
            if (result.longest().metres() > 0) {
                assertThat(isBroken(line.withLastLength(new Length(last_m)), bounds))
                        .as(as)
                        .isFalse();
            }
            assertThat(isBroken(line.withLastLength(new Length(last_m + section_m)), bounds))
                    .as(as)
                    .isTrue();
            assertThat(result.longestSafe().metres())
                    .as(as)
                    .isLessThanOrEqualTo(result.longest().metres());
        }
    }

    @Test
    void earlierHosesCountAsTheyLieHolds() {
        Run leader = new Run(ExampleLines.LEADER, Length.ofFeet(300), Length.ofFeet(0));
        Run attack = new Run(ExampleLines.ATTACK, Length.ofFeet(100), Length.ofFeet(0));
        Line line = new Line(ExampleLines.REAR, List.of(leader, attack), ExampleLines.SEVEN_EIGHTHS, "");
        ReachResult result = Reach.longest(line, LossErrors.UNCORRELATED, PUMP_1500.withCeiling(Pressure.ofPsi(200)));
        // (200 - 50 - 1.55 - 5.82) / 23.76 = 6.0014: 300 ft of leader and 600 ft of attack
        assertThat(result.longest().feet()).isCloseTo(900, within(1e-9));
        assertThat(result.sections()).isEqualTo(18);
    }

    @Test
    void automaticTipIsHeldToItsTargetFlowHolds() {
        Line line = ExampleLines.crosslay(ExampleLines.ATTACK, ExampleLines.CROSSLAY, ExampleLines.AUTOMATIC, 200, 0);
        Bounds target = PUMP_1500.withFlows(Optional.of(Flow.ofGpm(150)), Optional.empty());
        ReachResult result = Reach.longest(line, LossErrors.UNCORRELATED, target);
        // (250 - 100 - 4.64) / 20.68 = 7.03
        assertThat(result.longest().feet()).isCloseTo(700, within(1e-9));
        ReachResult untold = Reach.longest(line, LossErrors.UNCORRELATED, PUMP_1500);
        // (250 - 100 - 8.24) / 36.76 = 3.86
        assertThat(untold.longest().feet()).isCloseTo(350, within(1e-9));
        assertThat(untold.assumed()).anyMatch(says -> says.contains("auto-100"));
    }

    @Test
    void lineThatNothingStopsIsRefused() {
        Line line = ExampleLines.crosslay(
                new Hose(
                        "bare",
                        Length.ofInches(1.75),
                        Length.ofFeet(50),
                        Known.of(HoseLoss.ofUs(10)),
                        Optional.empty()),
                ExampleLines.CROSSLAY,
                ExampleLines.SEVEN_EIGHTHS,
                200,
                0);
        assertThatThrownBy(() -> Reach.longest(line, LossErrors.UNCORRELATED, Bounds.NONE))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("a ceiling");
    }

    @Test
    void curveGivesEveryLengthItsPressureHolds() {
        PressureByLength curve =
                PressureByLength.of(ExampleLines.measured(200, 0), ExampleLines.measuredErrors(), PUMP_1500, 16);
        assertThat(curve.points()).hasSize(16);
        PressureByLength.Point last = curve.points().get(15);
        assertThat(last.length().feet()).isCloseTo(800, within(1e-9));
        assertThat(last.needed().value().psi()).isCloseTo(needed(800, 9.19, 2.06), within(0.01));
        assertThat(last.needed().standardErrorSi())
                .isGreaterThan(curve.points().get(10).needed().standardErrorSi());
    }

    private static ReachResult longest(Line line, double ceiling_psi) {
        return Reach.longest(line, ExampleLines.measuredErrors(), Bounds.NONE.withCeiling(Pressure.ofPsi(ceiling_psi)));
    }

    /** 50 + (k + C L / 100) x 1.6079^2, all written out. */
    private static double needed(double length_ft, double c, double k) {
        double hundreds = 0.297 * 0.875 * 0.875 * Math.sqrt(50);
        return 50 + (k + c * length_ft / 100) * hundreds * hundreds;
    }

    private static boolean isBroken(Line line, Bounds bounds) {
        if (line.last().length().metres() <= 0) {
            return false;
        }
        LineState state = LineSolver.solve(line, Duty.of(line, Optional.empty()).ask());
        return LineLimits.of(line, state, bounds).stream().anyMatch(limit -> limit.broken());
    }
}
