package org.hosewright.hydraulics.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.ExampleLines;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.RandomLines;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.reach.Reach;
import org.hosewright.hydraulics.reach.ReachResult;
import org.junit.jupiter.api.Test;

class WorkingTest {
    private static final long SEED = 20260516;
    private static final int CASES = 1500;

    @Test
    void gardenCourtReadsAsOnPaperHolds() {
        Working working =
                PumpWorking.of(ExampleLines.crosslay(600, 20), new Ask.AtTip(Pressure.ofPsi(50)), UnitSystem.US);
        assertThat(working.steps())
                .extracting(Step::numbers, Step::result)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("29.7 \u00d7 0.875\u00b2 \u00d7 \u221a50", "160.79 gpm"),
                        org.assertj.core.groups.Tuple.tuple("50", "50.0 psi"),
                        org.assertj.core.groups.Tuple.tuple("2.06 \u00d7 1.6079\u00b2", "5.3 psi"),
                        org.assertj.core.groups.Tuple.tuple("9.19 \u00d7 1.6079\u00b2 \u00d7 6", "142.6 psi"),
                        org.assertj.core.groups.Tuple.tuple("0.434 \u00d7 20", "8.7 psi"),
                        org.assertj.core.groups.Tuple.tuple("50.0 + 5.3 + 142.6 + 8.7", "206.6 psi"));
    }

    @Test
    void valeReadsInItsOwnUnitsHolds() {
        Working working =
                PumpWorking.of(ExampleLines.delivery(75, 8), new Ask.AtTip(Pressure.ofKPa(350)), UnitSystem.SI);
        Step last = working.steps().get(working.steps().size() - 1);
        assertThat(last.result()).endsWith(" kPa");
        assertThat(Calculator.of(last.numbers())).isCloseTo(663, within(663 * 0.01));
        assertThat(working.steps().get(0).numbers()).startsWith("0.06636").contains("\u00d7 19\u00b2");
        assertThat(working.steps().get(3).says()).isEqualTo("Loss of 75 m of delivery-45");
    }

    @Test
    void sumClosesToTheLastDigitShownHolds() {
        RandomLines random = new RandomLines(SEED);
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            UnitSystem units = random.chance(0.5) ? UnitSystem.US : UnitSystem.SI;
            Ask ask = Duty.of(line, Optional.empty()).ask();
            Working working = PumpWorking.of(line, ask, units);
            List<Step> steps = working.steps();
            Step total = steps.get(steps.size() - 1);
            String as = "seed " + SEED + " case " + i + " " + total;
            assertThat(decimal(total.result())).as(as).isEqualByComparingTo(sumOf(total.numbers()));
            double pump = units.show(LineSolver.solve(line, ask).pump());
            double unit = units == UnitSystem.US ? 0.1 : 1;
            assertThat(decimal(total.result()).doubleValue()).as(as).isCloseTo(pump, within(unit / 2 + 1e-9));
        }
    }

    /** Each step comes out on a pocket calculator, within a unit of its last digit and what the shown digits leave. */
    @Test
    void everyStepAndAPocketCalculatorAgree() {
        RandomLines random = new RandomLines(SEED + 1);
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            UnitSystem units = random.chance(0.5) ? UnitSystem.US : UnitSystem.SI;
            String as = "seed " + SEED + " case " + i;
            check(PumpWorking.of(line, Duty.of(line, Optional.empty()).ask(), units), as);
            Pressure pump = Pressure.ofPsi(random.between(60, 300));
            LineState state = LineSolver.atPump(line, pump);
            check(FlowWorking.of(line, pump, units), as);
            if (state.flow().gpm() > 5) {
                check(ReactionWorking.of(line, state, units), as);
                check(LossWorking.ofHose(line, state.flow(), units), as);
                check(LossWorking.ofPiping(line, state.flow(), units), as);
            }
        }
    }

    @Test
    void reachWorkingAndReachAgree() {
        RandomLines random = new RandomLines(SEED + 2);
        for (int i = 0; i < 500; i++) {
            Line line = random.any();
            UnitSystem units = random.chance(0.5) ? UnitSystem.US : UnitSystem.SI;
            Bounds bounds = Bounds.NONE.withPump(
                    Optional.of(Pressure.ofPsi(random.between(100, 300))), Optional.of(Flow.ofGpm(1000)));
            ReachResult result = Reach.longest(line, LossErrors.UNCORRELATED, bounds);
            Working working = ReachWorking.of(line, bounds, result, units);
            List<Step> steps = working.steps();
            String as = "seed " + SEED + " case " + i + " " + steps;
            check(working, as);
            if (result.mostPump().isPresent() && result.longest().metres() > 0) {
                double shown = decimal(steps.get(steps.size() - 1).result()).doubleValue();
                assertThat(shown).as(as).isCloseTo(units.show(result.longest()), within(0.02 + shown * 1e-4));
            }
        }
    }

    @Test
    void reachReadsAsOnPaperHolds() {
        Bounds bounds = Bounds.NONE.withCeiling(Pressure.ofPsi(225));
        Line line = ExampleLines.crosslay(200, 0);
        ReachResult result = Reach.longest(line, LossErrors.UNCORRELATED, bounds);
        List<Step> steps = ReachWorking.of(line, bounds, result, UnitSystem.US).steps();
        assertThat(steps.get(0).says()).isEqualTo("Pump pressure that the ceiling for the pump allows");
        assertThat(steps.get(0).result()).isEqualTo("225.00 psi");
        // (225 - 50 - 5.33) / 23.76 = 7.14
        assertThat(steps.get(steps.size() - 2).result()).isEqualTo("714 ft");
        assertThat(steps.get(steps.size() - 1).numbers()).isEqualTo("14 \u00d7 50");
        assertThat(steps.get(steps.size() - 1).result()).isEqualTo("700 ft");
    }

    @Test
    void reachThatBreaksAtAnyLengthSaysWhyHolds() {
        Bounds bounds =
                Bounds.NONE.withCeiling(Pressure.ofPsi(225)).withCrew(Optional.of(new Crew(1, Force.ofLbf(60))));
        Line line = ExampleLines.crosslay(200, 0);
        ReachResult result = Reach.longest(line, LossErrors.UNCORRELATED, bounds);
        List<Step> steps = ReachWorking.of(line, bounds, result, UnitSystem.US).steps();
        assertThat(steps).hasSize(1);
        assertThat(steps.get(0).says()).contains("the reaction for a crew of 1");
    }

    @Test
    void safety15SafeReachReadsAsOnPaper() {
        Bounds bounds = Bounds.NONE.withCeiling(Pressure.ofPsi(225));
        Line line = ExampleLines.measured(200, 0);
        ReachResult result = Reach.longest(line, ExampleLines.measuredErrors(), bounds);
        Working working = SafeReachWorking.of(line, ExampleLines.measuredErrors(), bounds, result, UnitSystem.US);
        check(working, "safe reach");
        assertThat(working.steps()).hasSize(5);
        // 0.21 x 6.5 x 2.585 = 3.529; 1.0 x 2.585; correlation -0.8
        assertThat(working.steps().get(0).numbers())
                .isEqualTo("\u221a(3.529\u00b2 + 2.585\u00b2 \u2212 2 \u00d7 0.8 \u00d7 3.529 \u00d7 2.585)");
        assertThat(working.steps().get(1).result()).contains(", within 225.00 psi");
        assertThat(working.steps().get(3).result()).contains(", above 225.00 psi");
        assertThat(working.steps().get(4).result()).isEqualTo("650 ft");
    }

    @Test
    void safeReachStepsAndAPocketCalculatorAgree() {
        RandomLines random = new RandomLines(SEED + 3);
        for (int i = 0; i < 300; i++) {
            Line line = random.any();
            LossErrors errors = random.errors(line);
            UnitSystem units = random.chance(0.5) ? UnitSystem.US : UnitSystem.SI;
            Bounds bounds = Bounds.NONE.withCeiling(Pressure.ofPsi(random.between(100, 300)));
            ReachResult result = Reach.longest(line, errors, bounds);
            check(SafeReachWorking.of(line, errors, bounds, result, units), "seed " + SEED + " case " + i);
        }
    }

    @Test
    void downhillIsTakenOffHolds() {
        Working working =
                PumpWorking.of(ExampleLines.crosslay(200, -20), new Ask.AtTip(Pressure.ofPsi(50)), UnitSystem.US);
        Step last = working.steps().get(working.steps().size() - 1);
        assertThat(last.numbers()).endsWith(" \u2212 8.7");
        assertThat(working.steps().get(4).says()).isEqualTo("Tip 20 ft below the pump");
    }

    @Test
    void lineWithoutWaterSaysSoHolds() {
        Working working = FlowWorking.of(ExampleLines.crosslay(200, 100), Pressure.ofPsi(40), UnitSystem.US);
        assertThat(working.steps()).singleElement().extracting(Step::result).isEqualTo("0 gpm");
    }

    @Test
    void lengthsShowTheirUnitHolds() {
        assertThat(new Paper(UnitSystem.US).length(Length.ofFeet(150))).isEqualTo("150 ft");
        assertThat(Paper.significant(0.06636612, 5)).isEqualTo("0.066366");
        assertThat(Paper.significant(9.19, 5)).isEqualTo("9.19");
        assertThat(Paper.significant(1500, 5)).isEqualTo("1500");
        assertThat(Paper.significant(0, 5)).isEqualTo("0");
    }

    private static void check(Working working, String as) {
        for (Step step : working.steps()) {
            if (step.numbers().isEmpty() || step.numbers().matches(".*[A-Za-z]{2}.*")) {
                continue;
            }
            BigDecimal shown = decimal(step.result());
            double unit = Math.pow(10, -shown.scale());
            double byHand = Calculator.of(step.numbers());
            assertThat(byHand)
                    .as("%s: %s in %s", as, step, working.title())
                    .isCloseTo(shown.doubleValue(), within(unit * 1.01 + 4e-4 * Math.abs(byHand)));
        }
    }

    private static BigDecimal decimal(String result) {
        String number = result.substring(0, result.indexOf(' '));
        return new BigDecimal(number.replace('\u2212', '-'));
    }

    private static BigDecimal sumOf(String numbers) {
        String signed = numbers.replace("\u2212 ", "+ -").replace("\u2212", "-");
        return Pattern.compile(" \\+ ")
                .splitAsStream(signed)
                .map(part -> new BigDecimal(part.trim()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
