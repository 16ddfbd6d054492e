package org.hosewright.hydraulics.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

class LossErrorsTest {
    private static final long SEED = 20260513;
    private static final int CASES = 1000;

    /** Share by which an exact derivative and a central difference may differ [1]: the step's square and rounding. */
    private static final double DIFFERENCE = 1e-5;

    /** By hand: q^2 sqrt((9.19's 0.21 x 5.5)^2 + 1.0^2 - 2 x 0.8 x 1.155 x 1.0), q = 1.608 hundred gpm. */
    @Test
    void neededPressuresErrorMatchesPractice() {
        Known<Pressure> needed =
                LineSolver.neededPump(ExampleLines.measured(550, 0), ExampleLines.measuredErrors(), Pressure.ofPsi(50));
        double byHand = 1.6079 * 1.6079 * Math.sqrt(1.155 * 1.155 + 1 - 2 * 0.8 * 1.155);
        assertThat(new Pressure(needed.standardErrorSi()).psi()).isCloseTo(byHand, within(0.001));
    }

    @Test
    void noStatedErrorGivesNoStandardErrorHolds() {
        Line line = ExampleLines.crosslay(550, 0);
        assertThat(LineSolver.neededPump(line, LossErrors.UNCORRELATED, Pressure.ofPsi(50))
                        .standardError())
                .isEmpty();
        assertThat(LineSolver.delivered(line, LossErrors.UNCORRELATED, Pressure.ofPsi(185))
                        .standardError())
                .isEmpty();
        assertThat(LossErrors.UNCORRELATED.listAssumed(line))
                .containsExactly(
                        "The loss of attack-175 has no stated error: it is taken as exact.",
                        "The loss of crosslay-1 has no stated error: it is taken as exact.");
    }

    @Test
    void absentCorrelationsAreSaidHolds() {
        Line line = ExampleLines.measured(550, 0);
        assertThat(LossErrors.UNCORRELATED.listAssumed(line))
                .containsExactly("The errors of attack-175 and crosslay-1 are taken as independent.");
        assertThat(ExampleLines.measuredErrors().listAssumed(line)).isEmpty();
        LossErrors turned = new LossErrors(Map.of("crosslay-1/attack-175", -0.8));
        assertThat(turned.variance(line))
                .isEqualTo(ExampleLines.measuredErrors().variance(line));
    }

    @Test
    void impossibleCorrelationsAreRefused() {
        assertThatThrownBy(() -> new LossErrors(Map.of("a/b", 1.2))).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new LossErrors(Map.of("a/b", Double.NaN))).isInstanceOf(InvalidInput.class);
    }

    @Test
    void derivativesAndFiniteDifferencesAgree() {
        RandomLines random = new RandomLines(SEED);
        for (int i = 0; i < CASES; i++) {
            Line line = random.any();
            Flow flow = LineSolver.atPump(line, Pressure.ofPsi(random.between(80, 350)))
                    .flow();
            if (flow.gpm() > 1 && isSmoothAt(line, flow)) {
                check(line, flow, "seed " + SEED + " case " + i);
            }
        }
    }

    private static void check(Line line, Flow flow, String as) {
        Slopes slopes = Slopes.of(line, flow);
        double pump_Pa = LineSolver.atFlow(line, flow).pump().pascals();
        double h = 1e-5;
        double dR = h * Resistance.ofHose(line);
        Line more = line.withLossesTimes(1 + h);
        Line less = line.withLossesTimes(1 - h);
        assertThat((pump_Pa(more, flow) - pump_Pa(less, flow)) / (2 * dR))
                .as(as)
                .isCloseTo(slopes.pumpPerResistance(), within(DIFFERENCE * slopes.pumpPerResistance()));
        double perR = (flow_m3s(more, pump_Pa) - flow_m3s(less, pump_Pa)) / (2 * dR);
        assertThat(perR).as(as).isCloseTo(slopes.flowPerResistance(), within(DIFFERENCE * Math.abs(perR)));
        if (line.nozzle().flow().isPresent()) {
            Line wider = line.withFlowFactor(slopes.factor() + h);
            Line narrower = line.withFlowFactor(slopes.factor() - h);
            double perF = (flow_m3s(wider, pump_Pa) - flow_m3s(narrower, pump_Pa)) / (2 * h);
            assertThat(perF).as(as).isCloseTo(slopes.flowPerFactor(), within(DIFFERENCE * flow.cubicMetresPerSecond()));
            double pumpPerF = (pump_Pa(wider, flow) - pump_Pa(narrower, flow)) / (2 * h);
            assertThat(pumpPerF).as(as).isCloseTo(slopes.pumpPerFactorAtFlow(), within(DIFFERENCE * pump(flow, line)));
            checkAtTip(line, flow, slopes, as);
        }
    }

    private static void checkAtTip(Line line, Flow flow, Slopes slopes, String as) {
        if (line.tip() instanceof Automatic) {
            return;
        }
        double h = 1e-5;
        Pressure tip = LineSolver.atFlow(line, flow).tip();
        double more_Pa = LineSolver.atTip(line.withFlowFactor(slopes.factor() + h), tip)
                .pump()
                .pascals();
        double less_Pa = LineSolver.atTip(line.withFlowFactor(slopes.factor() - h), tip)
                .pump()
                .pascals();
        assertThat((more_Pa - less_Pa) / (2 * h))
                .as(as)
                .isCloseTo(slopes.pumpPerFactorAtTip(), within(DIFFERENCE * pump(flow, line)));
    }

    /** True where no step and no end of a band lies within a small part of the flow. */
    private static boolean isSmoothAt(Line line, Flow flow) {
        double q = flow.cubicMetresPerSecond();
        double before = LineCurve.of(line).slope(q * 0.999) / (q * 0.999);
        double after = LineCurve.of(line).slope(q * 1.001) / (q * 1.001);
        double step_Pa = pump_Pa(line, new Flow(q * 1.001)) - pump_Pa(line, new Flow(q * 0.999));
        double smooth_Pa = 0.002 * q * LineCurve.of(line).slope(q);
        return before == after && Math.abs(step_Pa - smooth_Pa) <= 1e-6 * smooth_Pa + 1e-3;
    }

    private static double pump(Flow flow, Line line) {
        return LineSolver.atFlow(line, flow).pump().pascals()
                + Pressure.ofPsi(100).pascals();
    }

    private static double pump_Pa(Line line, Flow flow) {
        return LineSolver.atFlow(line, flow).pump().pascals();
    }

    private static double flow_m3s(Line line, double pump_Pa) {
        return LineSolver.atPump(line, new Pressure(pump_Pa)).flow().cubicMetresPerSecond();
    }

    @Test
    void unknownPipingIsSaidHolds() {
        Line line = new Line(
                new org.hosewright.hydraulics.equipment.Discharge("deck", Optional.empty(), Optional.empty()),
                ExampleLines.measured(200, 0).runs(),
                ExampleLines.SEVEN_EIGHTHS,
                "");
        assertThat(ExampleLines.measuredErrors().listAssumed(line))
                .containsExactly("The piping loss of deck is not known: none is counted.");
    }
}
