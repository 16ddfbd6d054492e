package org.hosewright.hydraulics.working;

import java.util.List;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The hand calculation of what hose or piping takes at a flow. */
public final class LossWorking {
    private LossWorking() {}

    /** The working of the loss of all hose of a line. */
    public static Working ofHose(Line line, Flow flow, UnitSystem units) {
        Paper paper = new Paper(units);
        LossText text = new LossText(paper, line, flow);
        List<Row> rows = line.runs().stream().map(text::hose).collect(Collectors.toList());
        Sum sum = Sum.of(paper.pressureDecimals(), rows);
        List<Step> steps = sum.steps(paper.pressureUnit());
        if (rows.size() > 1) {
            steps.add(sum.total("Loss of all hose", paper.pressureUnit()));
        }
        return new Working("Hose loss at " + paper.flow(flow) + paper.flowUnit(), steps);
    }

    /** The working of the loss of the discharge piping. */
    public static Working ofPiping(Line line, Flow flow, UnitSystem units) {
        Paper paper = new Paper(units);
        Sum sum = Sum.of(paper.pressureDecimals(), List.of(new LossText(paper, line, flow).piping()));
        return new Working("Piping loss at " + paper.flow(flow) + paper.flowUnit(), sum.steps(paper.pressureUnit()));
    }
}
