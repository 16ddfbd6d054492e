package org.hosewright.hydraulics.working;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The hand calculation of the flow that a pump pressure delivers. */
public final class FlowWorking {
    private static final String TITLE = "Delivered flow";

    private final Paper paper;
    private final Line line;
    private final LineState state;
    private final TipText tip;

    private FlowWorking(Line line, Pressure pump, UnitSystem units) {
        this.paper = new Paper(units);
        this.line = line;
        this.state = LineSolver.atPump(line, pump);
        this.tip = new TipText(paper, line);
    }

    public static Working of(Line line, Pressure pump, UnitSystem units) {
        FlowWorking working = new FlowWorking(line, pump, units);
        if (working.state.flow().cubicMetresPerSecond() == 0) {
            return new Working(TITLE, List.of(working.dry()));
        }
        return new Working(TITLE, working.isOnStep() ? List.of(working.onStep()) : working.steps());
    }

    private List<Step> steps() {
        Sum left = Sum.ofRest(paper.pressureDecimals() + 1, drive());
        List<Row> takes = takes();
        Sum taken = Sum.of(decimalsFor(takes), takes);
        String at = paper.pressureUnit() + " at 100" + paper.flowUnit();
        List<Step> steps = new ArrayList<>();
        steps.add(left.total("Pressure that drives the flow", paper.pressureUnit()));
        steps.addAll(taken.steps(at));
        steps.add(taken.total("All that grows with the flow", at));
        steps.add(new Step(
                "Flow at the tip",
                "Q = 100 \u221a(p / all)",
                "100 \u00d7 \u221a(" + left.total() + " / " + taken.total() + ")",
                Numbers.fixed(paper.units().show(state.flow()), 1) + paper.flowUnit(),
                "every part grows with the square of the flow"));
        Row pressure = tip.pressure(state);
        steps.add(pressure.step(paper.pressure(state.tip()) + paper.pressureUnit()));
        return steps;
    }

    /** The pump pressure and what it must spare before water flows. */
    private List<Row> drive() {
        List<Row> rows = new ArrayList<>();
        rows.add(row("pump", state.pump()));
        if (state.rise().pascals() != 0) {
            rows.add(row("rise", state.rise()));
        }
        if (tip.holds(state.flow())) {
            rows.add(row("pressure held by the tip", state.tip()));
        }
        for (Run run : line.runs()) {
            if (run.end().isPresent() && run.end().get().loss() instanceof ApplianceLoss.Rule rule) {
                double loss_Pa = rule.loss_Pa(state.flow().cubicMetresPerSecond());
                rows.add(row(run.end().get().id(), new Pressure(loss_Pa)));
            }
        }
        return rows;
    }

    /** What each piece takes at 100 of the flow unit. */
    private List<Row> takes() {
        Flow hundred = Flow.of(100, paper.units().flow());
        LossText text = new LossText(paper, line, hundred);
        List<Row> rows = new ArrayList<>();
        rows.add(text.piping());
        for (Run run : line.runs()) {
            rows.add(text.hose(run));
            if (run.end().isPresent() && run.end().get().loss() instanceof ApplianceLoss.Quadratic) {
                rows.add(text.appliance(run.end().get()));
            }
        }
        if (!tip.holds(state.flow())) {
            rows.add(tip.takes(hundred, state));
        }
        return rows;
    }

    private boolean isOnStep() {
        return line.runs().stream()
                .flatMap(run -> run.end().stream())
                .anyMatch(end -> end.loss() instanceof ApplianceLoss.Rule rule
                        && rule.from().equals(state.flow())
                        && LineSolver.atFlow(line, state.flow()).pump().pascals()
                                > state.pump().pascals());
    }

    private Step onStep() {
        String flow = paper.flow(state.flow()) + paper.flowUnit();
        return new Step(
                "The flow stands where an allowance begins: less would need less pressure, more would need the allowance",
                "",
                paper.given(state.pump()) + paper.pressureUnit() + " at the pump",
                flow,
                "flat allowance from a flow upward");
    }

    private Step dry() {
        return new Step(
                "The rise takes all of the pump's pressure: no water reaches the tip",
                "pump \u2212 rise",
                paper.given(state.pump()) + " \u2212 " + paper.given(state.rise()),
                "0" + paper.flowUnit(),
                "");
    }

    private Row row(String name, Pressure pressure) {
        return new Row(name, "", "", "", "", paper.units().show(pressure));
    }

    private static int decimalsFor(List<Row> rows) {
        double sum = rows.stream().mapToDouble(Row::value).sum();
        int decimals = 4;
        for (; sum >= 10 && decimals > 0; sum /= 10) {
            decimals--;
        }
        for (; sum > 0 && sum < 1 && decimals < 6; sum *= 10) {
            decimals++;
        }
        return decimals;
    }
}
