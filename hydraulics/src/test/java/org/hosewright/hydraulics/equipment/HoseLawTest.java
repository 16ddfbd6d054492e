package org.hosewright.hydraulics.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.reach.Reach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HoseLawTest {
    /** Of the two published sets of exponents and of 0.433 or 0.434 psi/ft [%]. */
    private static final double FORMS = 1;

    /** Reading of a chart [%]. */
    private static final double CHART = 2;

    /** Newton's last step [psi]. */
    private static final double SOLVED_PSI = 1e-8;

    private static final Length METRE = new Length(1);

    /** The sprinkler trade's form, psi/ft = 4.52 Q^1.85 / (C^1.85 d^4.87): NFPA 13 (from memory). */
    @ParameterizedTest
    @CsvSource({"2.5, 140, 250", "2.5, 120, 100", "1.75, 140, 150", "4, 150, 1000", "5, 140, 1500"})
    void hazenWilliamsMatchesPublished(double inches, double c, double gpm) {
        double published = 4.52 * Math.pow(gpm, 1.85) / (Math.pow(c, 1.85) * Math.pow(inches, 4.87)) * 100;
        Pressure loss = hose(new HoseLaw.HazenWilliams(c), inches).loss(Length.ofFeet(100), Flow.ofGpm(gpm));
        assertThat(loss.psi()).isCloseTo(published, withinPercentage(FORMS));
    }

    /** Friction factors of the chart by L. F. Moody, Trans. ASME 66, 1944 (from memory); 64/Re where laminar. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.001, 1e5, 0.0222", "0.1, 0.01, 1e6, 0.0380", "0.05, 0, 1e5, 0.0180", "0.1, 0.001, 1500, 0.04267"
    })
    void darcyWeisbachMatchesPublished(double bore_m, double relative, double reynolds, double factor) {
        HoseLaw law = new HoseLaw.Roughness(new Length(relative * bore_m));
        double velocity_ms = reynolds * 1.004e-6 / bore_m;
        double flow_m3s = Math.PI / 4 * bore_m * bore_m * velocity_ms;
        double loss_Pa = law.over(new Length(bore_m), METRE).loss_Pa(flow_m3s);
        double found = loss_Pa * bore_m / (998.2 * velocity_ms * velocity_ms / 2);
        assertThat(found).isCloseTo(factor, withinPercentage(CHART));
    }

    /** From laminar to turbulent the loss climbs without a jump or a fall. */
    @Test
    void fromLaminarToTurbulentWithoutAJumpHolds() {
        HoseLaw law = new HoseLaw.Roughness(new Length(5e-5));
        Length bore = new Length(0.045);
        double before = 0;
        double step_m3s = 1e-8;
        for (double q = step_m3s; q < 4e-4; q += step_m3s) {
            double now = law.over(bore, METRE).loss_Pa(q);
            double slope = law.over(bore, METRE).slope(q);
            assertThat(now - before).as("at %s m3/s", q).isPositive().isLessThan(2 * slope * step_m3s + 1e-9);
            before = now;
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 95, 160, 300})
    void forwardOfInverseHolds(double gpm) {
        for (HoseLaw law : List.of(new HoseLaw.HazenWilliams(140), new HoseLaw.Roughness(new Length(2e-5)))) {
            Line line = line(law, 300);
            LineState asked = LineSolver.atFlow(line, Flow.ofGpm(gpm));
            LineState back = LineSolver.atPump(line, asked.pump());
            assertThat(back.flow().gpm()).isCloseTo(gpm, within(SOLVED_PSI));
            double sum_psi = back.tip().psi()
                    + back.hoseLoss().psi()
                    + back.pipingLoss().psi()
                    + back.rise().psi();
            assertThat(sum_psi).isCloseTo(asked.pump().psi(), within(SOLVED_PSI));
        }
    }

    /** The likely line some standard errors off, where only the piping has a stated error. */
    @Test
    void likelyLineOfALawIsOneWithOtherPipingHolds() {
        Line line = line(new HoseLaw.HazenWilliams(140), 200);
        Pressure pump = Pressure.ofPsi(120);
        Line worse = LossErrors.UNCORRELATED.shifted(line, pump, -1);
        Known<Flow> best = LineSolver.delivered(line, LossErrors.UNCORRELATED, pump);
        double less = best.value().gpm() - LineSolver.atPump(worse, pump).flow().gpm();
        assertThat(less).isCloseTo(best.standardError().orElseThrow().gpm(), withinPercentage(5));
    }

    /** The longest stretch of hose by a law keeps the ceiling, and a section more does not. */
    @Test
    void reachOfALawEndsAtTheCeilingHolds() {
        Bounds bounds = Bounds.NONE.withCeiling(Pressure.ofPsi(180));
        for (HoseLaw law : List.of(new HoseLaw.HazenWilliams(140), new HoseLaw.Roughness(new Length(2e-5)))) {
            double longest = Reach.longest(line(law, 100), LossErrors.UNCORRELATED, bounds)
                    .longest()
                    .feet();
            assertThat(needed_psi(law, longest)).isLessThanOrEqualTo(180);
            assertThat(needed_psi(law, longest + 50)).isGreaterThan(180);
        }
    }

    /** The coefficient shown for such hose loses the same at 10 ft/s. */
    @Test
    void coefficientOfALawIsItsOwnAtTenFeetASecondAgrees() {
        Hose hose = hose(new HoseLaw.HazenWilliams(140), 2.5);
        double bore_m = hose.diameter().metres();
        Flow flow = new Flow(Math.PI / 4 * bore_m * bore_m * HoseLaw.LIKE_MS);
        assertThat(hose.loss().value().over(Length.ofFeet(100), flow).psi())
                .isCloseTo(hose.loss(Length.ofFeet(100), flow).psi(), within(SOLVED_PSI));
    }

    @Test
    void numbersThatNoHoseHasAreRefused() {
        assertThatThrownBy(() -> new HoseLaw.HazenWilliams(14)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new HoseLaw.Roughness(new Length(-1e-6))).isInstanceOf(InvalidInput.class);
    }

    private static double needed_psi(HoseLaw law, double feet) {
        return LineSolver.atTip(line(law, feet), Pressure.ofPsi(50)).pump().psi();
    }

    private static Line line(HoseLaw law, double feet) {
        PointLoss piping = PointLoss.ofUs(2);
        Discharge out = new Discharge("out", Optional.empty(), Optional.of(Known.of(piping, PointLoss.ofUs(0.5))));
        Run run = new Run(hose(law, 1.75), Length.ofFeet(feet), Length.ofFeet(10));
        Nozzle nozzle = Nozzle.of("tip", new SmoothBore(Length.ofInches(0.875), Pressure.ofPsi(50)));
        return new Line(out, List.of(run), nozzle, "");
    }

    private static Hose hose(HoseLaw law, double inches) {
        return Hose.by(law, "hose", Length.ofInches(inches), Length.ofFeet(50), Optional.of(Pressure.ofPsi(300)));
    }
}
