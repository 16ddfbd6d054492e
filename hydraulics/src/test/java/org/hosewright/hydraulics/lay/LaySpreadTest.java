package org.hosewright.hydraulics.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.foam.Eductor;
import org.hosewright.hydraulics.foam.FoamMix;
import org.hosewright.hydraulics.foam.Proportioner;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;
import org.junit.jupiter.api.Test;

/** Standard errors of a lay's answers. */
class LaySpreadTest {
    /** Agreement of adjoints with the closed form, relative: a network closes to 1e-10 of its largest head. */
    private static final double CLOSED = 1e-8;

    /** Differences over a twentieth of an error each way bend by less [1]. */
    private static final double DIFFERENCED = 1e-5;

    private static final HoseLoss R = HoseLoss.ofUs(2);
    private static final HoseLoss ERROR = HoseLoss.ofUs(0.06);
    private static final Length FEET_200 = Length.ofFeet(200);

    private static final LossErrors ERRORS = new LossErrors(Map.of("attack-175/one", -0.8));

    private static Leg leg(String id) {
        Hose hose = new Hose(
                "attack-175",
                Length.ofInches(1.75),
                Length.ofFeet(50),
                Known.of(HoseLoss.ofUs(9.19), HoseLoss.ofUs(0.21)),
                Optional.empty());
        return new Leg(
                List.of(new Run(hose, Length.ofFeet(350), Length.ofFeet(20))),
                Lays.outlet(id, Lays.SEVEN_EIGHTHS, false));
    }

    private static Discharge discharge(String id) {
        return new Discharge(id, Optional.empty(), Optional.of(Known.of(PointLoss.ofUs(2.06), PointLoss.ofUs(1))));
    }

    private static LaySpread spread(Lay lay, Ask ask, LossErrors errors) {
        return LaySpread.of(lay, ask, LaySolver.solve(lay, ask), errors);
    }

    /** One line: the same errors as its closed form, correlation included. */
    @Test
    void lineAgrees() {
        Lay lay = new Lay(List.of(new Lay.FromDischarge(discharge("one"), leg("a"))));
        Ask fifty = new Ask.AtTip(Pressure.ofPsi(50));
        Line line = LaySolver.solve(lay, fifty).tips().get(0).path();
        double pump = LineSolver.neededPump(line, ERRORS, fifty).standardErrorSi();
        assertThat(spread(lay, fifty, ERRORS).pump().standardErrorSi()).isCloseTo(pump, within(CLOSED * pump));
        Pressure held = Pressure.ofPsi(140);
        double flow = LineSolver.delivered(line, ERRORS, held).standardErrorSi();
        LaySpread forward = spread(lay, new Ask.AtPump(held), ERRORS);
        assertThat(forward.flows().get("a").standardErrorSi()).isCloseTo(flow, within(CLOSED * flow));
        assertThat(forward.pump().standardError()).isEmpty();
    }

    /** A valve that reduces: what lies before it counts for nothing, and behind it q = root of P / (R L + k). */
    @Test
    void reducerInItsBandAgrees() {
        Pressure holds = Pressure.ofPsi(80);
        Leg before = new Leg(List.of(own("before")), new End.Reducer("valve", holds, tipped("behind")));
        Lay lay = new Lay(List.of(new Lay.FromDischarge(discharge("one"), before)));
        for (double pump_psi : new double[] {150, 190}) {
            LaySpread spread = spread(lay, new Ask.AtPump(Pressure.ofPsi(pump_psi)), LossErrors.UNCORRELATED);
            double k = new SmoothBore(Length.ofInches(0.875), Pressure.ofPsi(50)).pressure_Pa(1);
            double rest = R.r() * FEET_200.metres() + k;
            double q = Math.sqrt(holds.pascals() / rest);
            double error = q / 2 * ERROR.r() * FEET_200.metres() / rest;
            assertThat(spread.flows().get("a").value().cubicMetresPerSecond()).isCloseTo(q, within(1e-9 * q));
            assertThat(spread.flows().get("a").standardErrorSi()).isCloseTo(error, within(DIFFERENCED * error));
        }
    }

    /** A valve that stands wide open: the same errors as without it, which the network's factor gives. */
    @Test
    void reducerWideOpenAgrees() {
        End open = new End.Reducer("valve", Pressure.ofPsi(180), tipped("behind"));
        Lay valved = new Lay(List.of(new Lay.FromDischarge(discharge("one"), new Leg(List.of(own("before")), open))));
        Leg both = new Leg(List.of(own("before"), own("behind")), Lays.outlet("a", Lays.SEVEN_EIGHTHS, false));
        Lay bare = new Lay(List.of(new Lay.FromDischarge(discharge("one"), both)));
        for (Ask ask : List.of(new Ask.AtTip(Pressure.ofPsi(50)), new Ask.AtPump(Pressure.ofPsi(150)))) {
            LaySpread ours = spread(valved, ask, LossErrors.UNCORRELATED);
            LaySpread theirs = spread(bare, ask, LossErrors.UNCORRELATED);
            double pump = theirs.pump().standardErrorSi();
            double flow = theirs.flows().get("a").standardErrorSi();
            assertThat(ours.pump().standardErrorSi()).isCloseTo(pump, within(DIFFERENCED * pump));
            assertThat(ours.flows().get("a").standardErrorSi()).isCloseTo(flow, within(DIFFERENCED * flow));
        }
    }

    /** An eductor that draws: its flow goes by its inlet alone, q = root of P / (R L + p / q0^2), whatever lies behind. */
    @Test
    void eductorThatDrawsAgrees() {
        Proportioner made = new Proportioner(
                new Eductor(Pressure.ofPsi(200), Flow.ofGpm(95)),
                new Ratio(0.65),
                new FoamMix(new Ratio(0.03)),
                Optional.empty());
        End eductor = new End.InlineEductor("eductor", made, tipped("behind"));
        Discharge bare = new Discharge("one", Optional.empty(), Optional.empty());
        Lay lay = new Lay(List.of(new Lay.FromDischarge(bare, new Leg(List.of(own("before")), eductor))));
        LaySpread spread = spread(lay, new Ask.AtPump(Pressure.ofPsi(210)), LossErrors.UNCORRELATED);
        double q0 = Flow.ofGpm(95).cubicMetresPerSecond();
        double rest = R.r() * FEET_200.metres() + Pressure.ofPsi(200).pascals() / (q0 * q0);
        double q = Math.sqrt(Pressure.ofPsi(210).pascals() / rest);
        double error = q / 2 * ERROR.r() * FEET_200.metres() / rest;
        assertThat(spread.flows().get("a").value().cubicMetresPerSecond()).isCloseTo(q, within(1e-9 * q));
        assertThat(spread.flows().get("a").standardErrorSi()).isCloseTo(error, within(DIFFERENCED * error));
    }

    private static Run own(String id) {
        Hose hose = new Hose(id, Length.ofInches(2.5), Length.ofFeet(50), Known.of(R, ERROR), Optional.empty());
        return new Run(hose, FEET_200, new Length(0));
    }

    private static Leg tipped(String hose) {
        return new Leg(List.of(own(hose)), Lays.outlet("a", Lays.SEVEN_EIGHTHS, false));
    }

    /** A wye of two like legs: the hose's error counts at both, so that the pump's is that of one leg, more or less. */
    @Test
    void wyeHolds() {
        Leg feed = new Leg(
                List.of(Lays.run("leader-3", 3, 0.75, 400, 0)),
                new End.Wye(Optional.empty(), List.of(leg("a"), leg("b"))));
        Lay lay = new Lay(List.of(new Lay.FromDischarge(discharge("one"), feed)));
        LaySpread spread = spread(lay, new Ask.AtTip(Pressure.ofPsi(50)), LossErrors.UNCORRELATED);
        double hose = 0.21 * 1.61 * 1.61 * 3.5;
        double piping = 3.22 * 3.22;
        double psi = Math.sqrt(hose * hose + piping * piping);
        assertThat(spread.pump().standardError().orElseThrow().psi()).isCloseTo(psi, within(0.01 * psi));
        assertThat(spread.assumed()).containsExactly("The errors of one and attack-175 are taken as independent.");
    }
}
