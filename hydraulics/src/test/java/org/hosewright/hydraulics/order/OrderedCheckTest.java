package org.hosewright.hydraulics.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.line.ExampleLines;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.RandomLines;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderedCheckTest {
    private static final Rounding NEAREST_5 = Rounding.of(UnitSystem.US, Rounding.Way.NEAREST);
    private static final Rounding UP_5 = Rounding.of(UnitSystem.US, Rounding.Way.UP);
    private static final Bounds BOUNDS = Bounds.NONE
            .withPump(Optional.of(Pressure.ofPsi(250)), Optional.of(Flow.ofGpm(1500)))
            .withCrew(Optional.of(new Crew(2, Force.ofLbf(75))))
            .withFlows(Optional.of(Flow.ofGpm(161)), Optional.of(Flow.ofGpm(150)));

    @ParameterizedTest
    @CsvSource({"102.4,100,105", "102.5,105,105", "105,105,105", "105.0000001,105,105", "106,105,110"})
    void roundingIsToTheStepHalvesUpHolds(double psi, double nearest, double up) {
        assertThat(NEAREST_5.round(Pressure.ofPsi(psi)).psi()).isCloseTo(nearest, within(1e-9));
        assertThat(UP_5.round(Pressure.ofPsi(psi)).psi()).isCloseTo(up, within(1e-9));
        assertThat(Rounding.of(UnitSystem.SI, Rounding.Way.NEAREST)
                        .round(Pressure.ofKPa(663))
                        .kPa())
                .isCloseTo(650, within(1e-9));
    }

    @Test
    void goodPressurePassesAndShowsWhatItDeliversHolds() {
        OrderedCheck check = Ordering.of(ExampleLines.measuredErrors(), BOUNDS, NEAREST_5)
                .rounded(ExampleLines.measured(200, 0), Pressure.ofPsi(102.9));
        assertThat(check.ordered().psi()).isCloseTo(105, within(1e-9));
        assertThat(check.passed()).isTrue();
        assertThat(check.refusal()).isEmpty();
        assertThat(check.wouldDo().orElseThrow().psi()).isCloseTo(105, within(1e-9));
        assertThat(check.state().flow().gpm()).isCloseTo(162.5, within(0.5));
        assertThat(check.least().flow().gpm()).isLessThan(check.state().flow().gpm());
        assertThat(check.most().reaction().lbf())
                .isGreaterThan(check.state().reaction().lbf());
        assertThat(check.checks())
                .extracting(Check::what)
                .contains(
                        "least flow",
                        "the reaction for a crew of 2",
                        "the ceiling for the pump",
                        "attack-175, nozzle shut");
    }

    @Test
    void safety04LeastFlowIsCheckedWhereLossesAreHigh() {
        Line line = ExampleLines.measured(550, 0);
        // 100 sqrt(165 / (2.06 + 50.55 + 19.34)) = 151.4 gpm at the best estimate, but less where the losses are high.
        Bounds bounds = BOUNDS.withFlows(Optional.empty(), Optional.of(Flow.ofGpm(151)));
        OrderedCheck check =
                Ordering.of(ExampleLines.measuredErrors(), bounds, NEAREST_5).asOrdered(line, Pressure.ofPsi(165));
        assertThat(check.state().flow().gpm()).isGreaterThan(151);
        assertThat(check.least().flow().gpm()).isLessThan(151);
        assertThat(check.passed()).isFalse();
        assertThat(check.refusal())
                .anyMatch(says -> says.contains("where the losses are high") && says.contains("151 gpm"))
                .contains("170 psi would do.");
    }

    @Test
    void safety04ReactionIsCheckedWhereLossesAreLow() {
        Line line = ExampleLines.measured(550, 0);
        Bounds bounds = BOUNDS.withFlows(Optional.empty(), Optional.empty());
        // 75 lbf is 179.6 gpm at 62.4 psi: 71.95 x 1.796^2 = 232.1 psi at the best estimate.
        OrderedCheck best =
                Ordering.of(ExampleLines.measuredErrors(), bounds, NEAREST_5).asOrdered(line, Pressure.ofPsi(230));
        assertThat(best.state().reaction().lbf()).isLessThan(75);
        assertThat(best.most().reaction().lbf()).isGreaterThan(75);
        assertThat(best.passed()).isFalse();
        assertThat(best.refusal()).anyMatch(says -> says.contains("reaction for a crew of 2"));
        OrderedCheck exact = Ordering.of(LossErrors.UNCORRELATED, bounds, NEAREST_5)
                .asOrdered(ExampleLines.crosslay(550, 0), Pressure.ofPsi(230));
        assertThat(exact.passed()).isTrue();
        assertThat(exact.notChecked()).anyMatch(says -> says.contains("least flow"));
    }

    @Test
    void safety04TipPressureIsCheckedFromBothSides() {
        Line line = ExampleLines.measured(200, 0);
        // At 105 psi 51.0 psi at the best estimate; 0.71 psi at 100 gpm of 39.78 move it by 3.5 % to either side.
        Bounds bounds = BOUNDS.withTip(Optional.of(Pressure.ofPsi(49)), Optional.of(Pressure.ofPsi(53)));
        assertThat(passes(line, bounds, 100)).isFalse();
        assertThat(passes(line, bounds, 105)).isTrue();
        assertThat(passes(line, bounds, 110)).isFalse();
    }

    @Test
    void safety01OrderedPressureIsHeldToTheShutPressure() {
        Line line = ExampleLines.crosslay(200, -100);
        Bounds bounds = Bounds.NONE;
        // 270 - 43.4 = 226.6
        assertThat(passes(line, bounds, 225)).isTrue();
        OrderedCheck check =
                Ordering.of(LossErrors.UNCORRELATED, bounds, NEAREST_5).rounded(line, Pressure.ofPsi(228));
        assertThat(check.passed()).isFalse();
        assertThat(check.refusal())
                .anyMatch(says -> says.contains("attack-175, nozzle shut"))
                .contains("225 psi would do.");
    }

    @Test
    void noneWouldDoIsSaidHolds() {
        Bounds bounds = BOUNDS.withFlows(Optional.empty(), Optional.of(Flow.ofGpm(200)));
        OrderedCheck check = Ordering.of(ExampleLines.measuredErrors(), bounds, UP_5)
                .rounded(ExampleLines.measured(200, 0), Pressure.ofPsi(105));
        assertThat(check.passed()).isFalse();
        assertThat(check.wouldDo()).isEmpty();
        assertThat(check.refusal()).contains("No multiple of 5 psi would do.");
    }

    @Test
    void sentencesSpeakTheCompanysUnitsHolds() {
        Bounds bounds = Bounds.NONE
                .withCeiling(Pressure.ofKPa(1000))
                .withFlows(Optional.empty(), Optional.of(Flow.ofLitresPerMinute(400)));
        OrderedCheck check = Ordering.of(
                        LossErrors.UNCORRELATED, bounds, Rounding.of(UnitSystem.SI, Rounding.Way.NEAREST))
                .rounded(ExampleLines.delivery(225, 8), Pressure.ofKPa(1103));
        assertThat(check.ordered().kPa()).isCloseTo(1100, within(1e-9));
        assertThat(check.refusal())
                .anyMatch(says -> says.contains("1100 kPa") && says.contains("above 1000 kPa"))
                .contains("1000 kPa would do.");
    }

    /** Lines drawn with their errors: the flow stays above the lower edge and below the upper in 97.5 % each. */
    @Test
    void safety04EdgesAgreeWithDrawnLosses() {
        RandomLines random = new RandomLines(20260515);
        Line line = ExampleLines.measured(550, 0);
        OrderedCheck check =
                Ordering.of(ExampleLines.measuredErrors(), BOUNDS, NEAREST_5).asOrdered(line, Pressure.ofPsi(185));
        int draws = 20_000;
        int low = 0;
        int high = 0;
        for (int i = 0; i < draws; i++) {
            double one = random.gaussian();
            double other = -0.8 * one + 0.6 * random.gaussian();
            double all = (9.19 + 0.21 * one) * 5.5 + 2.06 + other + 1e4 / Math.pow(29.7 * 0.875 * 0.875, 2);
            double flow_gpm = 100 * Math.sqrt(185 / all);
            low += flow_gpm < check.least().flow().gpm() ? 1 : 0;
            high += flow_gpm > check.most().flow().gpm() ? 1 : 0;
        }
        // Standard deviation of the share: sqrt(0.025 x 0.975 / 20,000) = 0.11 %; the band is four of them.
        assertThat(low / (double) draws).isCloseTo(0.025, within(0.0045));
        assertThat(high / (double) draws).isCloseTo(0.025, within(0.0045));
    }

    private static boolean passes(Line line, Bounds bounds, double pump_psi) {
        return Ordering.of(ExampleLines.measuredErrors(), bounds, NEAREST_5)
                .asOrdered(line, Pressure.ofPsi(pump_psi))
                .passed();
    }
}
