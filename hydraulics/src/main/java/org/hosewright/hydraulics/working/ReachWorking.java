package org.hosewright.hydraulics.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.reach.ReachResult;

/** The hand calculation of how far a line goes. */
public final class ReachWorking {
    private final Paper paper;
    private final Line line;
    private final Duty duty;
    private final LineState state;
    private final ReachResult result;

    private ReachWorking(Line line, Duty duty, ReachResult result, Paper paper) {
        this.paper = paper;
        this.line = line;
        this.duty = duty;
        this.state = LineSolver.solve(line, duty.ask());
        this.result = result;
    }

    /** The working of a reach.
     *
     * @param line the line as it was asked about
     * @param bounds as they were then
     * @param result what {@link org.hosewright.hydraulics.reach.Reach} found
     */
    public static Working of(Line line, Bounds bounds, ReachResult result, UnitSystem units) {
        Duty duty = Duty.of(line, bounds.target());
        ReachWorking working = new ReachWorking(line, duty, result, new Paper(units));
        Optional<Pressure> most = result.mostPump();
        return new Working("Longest stretch", most.isPresent() ? working.steps(most.get()) : List.of(working.never()));
    }

    private List<Step> steps(Pressure most) {
        List<Row> rows = new ArrayList<>();
        rows.add(allowed(most));
        rows.addAll(fixed());
        Sum left = Sum.ofRest(paper.pressureDecimals() + 1, rows);
        List<Step> steps = new ArrayList<>(left.steps(paper.pressureUnit()));
        if (duty.ask() instanceof Ask.AtTip) {
            steps.add(1, new TipText(paper, line).flow(state.tip(), state.flow()));
        }
        steps.add(left.total("Pressure left for " + line.last().hose().id(), paper.pressureUnit()));
        if (result.longest().metres() == 0) {
            steps.add(none());
            return steps;
        }
        Row per = new LossText(paper, line, state.flow()).hose(line.last().withLength(hundred()));
        String perHundred = Paper.significant(per.value(), 5);
        steps.add(per.step(perHundred + paper.pressureUnit()));
        steps.addAll(sections(show(most), rows, perHundred, left.total()));
        return steps;
    }

    /** What the line takes whatever the length of its last hose, tip first. */
    private List<Row> fixed() {
        List<Row> rows = new ArrayList<>();
        rows.add(
                duty.ask() instanceof Ask.AtTip
                        ? new Row("tip", "Pressure at the tip", "p", paper.given(state.tip()), "", show(state.tip()))
                        : new TipText(paper, line).pressure(state));
        LossText text = new LossText(paper, line, state.flow());
        rows.add(text.piping());
        for (int i = 0; i < line.runs().size(); i++) {
            if (i < line.runs().size() - 1) {
                rows.add(text.hose(line.runs().get(i)));
            }
            line.runs().get(i).end().ifPresent(end -> rows.add(text.appliance(end)));
        }
        rows.add(text.rise());
        return rows;
    }

    private List<Step> sections(double most, List<Row> rows, String perHundred, String left) {
        double spent = rows.stream().mapToDouble(Row::value).sum() - most;
        double per = show(line.last().hose().loss(hundred(), state.flow()));
        double length = 100 * (most - spent) / per;
        double section = paper.units().show(line.last().hose().section());
        double last = Math.max(0, Math.floor(length / section + 1e-9)) * section;
        String unit = " " + paper.units().length().symbol();
        String id = line.last().hose().id();
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                "Length of " + id + " that uses it up",
                "L = 100 p / loss",
                "100 \u00d7 " + left + " / " + perHundred,
                Numbers.fixed(length, 0) + unit,
                ""));
        steps.add(new Step(
                "Whole sections of " + id + ", rounded down",
                "",
                Numbers.plain(Numbers.toNearest(last / section, 1)) + " \u00d7 " + Paper.significant(section, 5),
                Paper.significant(last, 5) + unit,
                ""));
        if (line.runs().size() > 1) {
            String total = paper.length(result.longest());
            steps.add(new Step("With the hose before it", "", "", total, "every section counted"));
        }
        return steps;
    }

    private Row allowed(Pressure most) {
        Limit stop = result.stop();
        String says = "Pump pressure that " + stop.what() + " allows";
        if (stop.kind() == LimitKind.PUMP) {
            String numbers = "the pump still gives " + paper.flow(state.flow()) + paper.flowUnit() + " there";
            return new Row("pump", says, "", numbers, stop.rule(paper.units()), show(most));
        }
        double fall = show(most) - paper.units().show(stop.limit());
        boolean level = Math.abs(fall) < 1e-6;
        String head = level ? "" : (fall < 0 ? " \u2212 " : " + ") + Paper.significant(Math.abs(fall), 5);
        String source =
                stop.rule(paper.units()) + (level ? "" : "; the height of that place below or above the pump counts");
        return new Row("pump", says, "", paper.given(stop.limit()) + head, source, show(most));
    }

    private Step none() {
        String unit = " " + paper.units().length().symbol();
        String says =
                "That does not do for one section of " + line.last().hose().id();
        return new Step(says, "", "", "0" + unit, "");
    }

    private Step never() {
        Limit stop = result.stop();
        String unit = " " + paper.units().unitOf(stop.at());
        return new Step(
                "At any length " + stop.what() + " is exceeded",
                "",
                paper.given(stop.at()) + unit + " against " + paper.given(stop.limit()) + unit,
                "0 " + paper.units().length().symbol(),
                stop.rule(paper.units()));
    }

    private Length hundred() {
        return Length.of(100, paper.units().length());
    }

    private double show(Pressure pressure) {
        return paper.units().show(pressure);
    }
}
