package org.hosewright.hydraulics.working;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The hand calculation of the pump pressure that a line needs. */
public final class PumpWorking {
    private PumpWorking() {}

    /** The working for a tip pressure or a flow; a pump pressure asked for is worked from the flow it delivers. */
    public static Working of(Line line, Ask ask, UnitSystem units) {
        Paper paper = new Paper(units);
        LineState state = LineSolver.solve(line, ask);
        TipText tip = new TipText(paper, line);
        List<Row> rows = new ArrayList<>();
        rows.add(ask instanceof Ask.AtTip ? asked(paper, state) : tip.pressure(state));
        rows.addAll(new LossText(paper, line, state.flow()).rows());
        Sum sum = Sum.of(paper.pressureDecimals(), rows);
        List<Step> steps = new ArrayList<>();
        if (ask instanceof Ask.AtTip) {
            steps.add(tip.flow(state.tip(), state.flow()));
        }
        steps.addAll(sum.steps(paper.pressureUnit()));
        steps.add(sum.total("Pump pressure at a gauge before the piping", paper.pressureUnit()));
        return new Working("Needed pump pressure", steps);
    }

    private static Row asked(Paper paper, LineState state) {
        double value = paper.units().show(state.tip());
        return new Row("tip", "Pressure asked for at the tip", "p", paper.given(state.tip()), "", value);
    }
}
