package org.hosewright.hydraulics.working;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.ErrorPart;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.reach.Reach;
import org.hosewright.hydraulics.reach.ReachResult;

/** The hand calculation of the longest stretch that holds with 95 % confidence. */
public final class SafeReachWorking {
    private static final String TITLE = "Longest stretch that holds with 95 % confidence";

    private final Paper paper;
    private final Line line;
    private final LossErrors errors;
    private final Ask ask;

    private SafeReachWorking(Line line, LossErrors errors, Ask ask, UnitSystem units) {
        this.paper = new Paper(units);
        this.line = line;
        this.errors = errors;
        this.ask = ask;
    }

    /** The working of {@link ReachResult#longestSafe}: the needed pressure there and one section further.
     *
     * @param line the line as it was asked about
     * @param errors as they were then
     * @param bounds as they were then
     */
    public static Working of(Line line, LossErrors errors, Bounds bounds, ReachResult result, UnitSystem units) {
        SafeReachWorking working = new SafeReachWorking(
                line, errors, Duty.of(line, bounds.target()).ask(), units);
        double before_m = line.length().metres() - line.last().length().metres();
        double last_m = Math.max(0, result.longestSafe().metres() - before_m);
        double section_m = line.last().hose().section().metres();
        List<Step> steps = new ArrayList<>();
        if (last_m > 0) {
            steps.addAll(working.at(new Length(last_m), result));
        }
        steps.addAll(working.at(new Length(last_m + section_m), result));
        steps.add(new Step(
                "Longest of which it holds",
                "",
                "",
                working.paper.length(result.longestSafe()),
                last_m > 0 ? "" : "not even one section does"));
        return new Working(TITLE, steps);
    }

    private List<Step> at(Length last, ReachResult result) {
        Line longer = line.withLastLength(last);
        Known<Pressure> needed = LineSolver.neededPump(longer, errors, ask);
        String length = paper.length(longer.length());
        String estimate = fixed(needed.value().pascals());
        String error = fixed(needed.standardErrorSi());
        double high_Pa = needed.value().pascals() + Reach.ONE_SIDED_95 * needed.standardErrorSi();
        List<Step> steps = new ArrayList<>();
        if (needed.standardError().isPresent()) {
            steps.add(new Step(
                    "Standard error of the pump pressure for " + length,
                    "root of the sum of squares, correlations counted",
                    root(ErrorPart.listOf(longer, ask)),
                    error + paper.pressureUnit(),
                    "what each number's own error does at that flow: " + names(longer)));
        }
        steps.add(new Step(
                "Pump pressure that " + length + " may need",
                "needed + 1.645 errors",
                estimate + " + " + Numbers.plain(Reach.ONE_SIDED_95) + " \u00d7 " + error,
                fixed(high_Pa) + paper.pressureUnit() + verdict(high_Pa, result),
                "19 of 20 such lines need less"));
        return steps;
    }

    private String verdict(double high_Pa, ReachResult result) {
        return result.mostPump()
                .map(most -> (high_Pa > most.pascals() * (1 + 1e-9) ? ", above " : ", within ")
                        + fixed(most.pascals())
                        + paper.pressureUnit())
                .orElse("");
    }

    private String root(List<ErrorPart> parts) {
        StringBuilder sum = new StringBuilder("\u221a(");
        for (int i = 0; i < parts.size(); i++) {
            sum.append(i == 0 ? "" : " + ").append(part(parts.get(i))).append("\u00b2");
        }
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                double rho = errors.findCorrelation(
                                parts.get(i).id(), parts.get(j).id())
                        .orElse(0.0);
                if (rho != 0) {
                    boolean less = rho
                                    * parts.get(i).pressure().pascals()
                                    * parts.get(j).pressure().pascals()
                            < 0;
                    sum.append(less ? " \u2212 2 \u00d7 " : " + 2 \u00d7 ")
                            .append(Paper.significant(Math.abs(rho), 4))
                            .append(" \u00d7 ")
                            .append(part(parts.get(i)))
                            .append(" \u00d7 ")
                            .append(part(parts.get(j)));
                }
            }
        }
        return sum.append(")").toString();
    }

    private String part(ErrorPart part) {
        return Paper.significant(Math.abs(paper.units().show(part.pressure())), 4);
    }

    private String names(Line longer) {
        return String.join(
                ", ", ErrorPart.listOf(longer, ask).stream().map(ErrorPart::id).toList());
    }

    private String fixed(double pressure_Pa) {
        return Numbers.fixed(paper.units().show(new Pressure(pressure_Pa)), paper.pressureDecimals() + 1);
    }
}
