package org.hosewright.hydraulics.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** Standard errors of a lay's answers. */
class LaySpreadTest {
    /** Agreement of adjoints with the closed form, relative: a network closes to 1e-10 of its largest head. */
    private static final double CLOSED = 1e-8;

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
