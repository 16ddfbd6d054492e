package org.hosewright.ledger.walk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.ground.stretch.StretchEstimate;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.reach.Reach;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;

/** An estimated stretch laid with a package: what the pump must do for the fewest sections, the planned and the most.
 *
 * @param estimate the hose
 * @param named the package, as much of its last hose as the stretch takes
 * @param rise the tip above the pump, negative downhill
 * @param lines by rising count of sections, each count once; counts that its earlier hoses already pass are left out
 * @param assumed each default that the result rests on
 */
public record StretchReport(
        StretchEstimate estimate, HosePackage named, Length rise, List<Laid> lines, List<String> assumed) {
    public StretchReport {
        lines = List.copyOf(lines);
        assumed = List.copyOf(assumed);
    }

    /** The line with a count of sections.
     *
     * @param sections of the estimate
     * @param line what it needs and the limit that it uses most
     */
    public record Laid(int sections, LineThere line) {}

    /** The report of an estimate.
     *
     * @param rise the tip above the pump, negative downhill
     * @param today the day that ages of tests are taken at; absent where they are not judged
     */
    public static StretchReport of(
            StretchEstimate estimate, Kit kit, HosePackage named, Length rise, Optional<LocalDate> today) {
        Line level = KitLines.of(kit, named, new Length(0));
        Bounds bounds = KitBounds.of(kit, named, today);
        LossErrors errors = KitErrors.of(kit);
        Duty duty = Duty.of(level, bounds.target());
        double earlier_m = level.length().metres() - level.last().length().metres();
        List<Laid> lines = new ArrayList<>();
        for (int count : counts(estimate)) {
            double last_m = count * estimate.plan().section().metres() - earlier_m;
            if (last_m > 0) {
                Line line = level.withLastLength(new Length(last_m)).withRise(rise);
                lines.add(new Laid(count, there(line, errors, bounds, duty)));
            }
        }
        Set<String> assumed = new LinkedHashSet<>(estimate.assumed());
        assumed.addAll(duty.assumed());
        assumed.addAll(errors.listAssumed(level));
        return new StretchReport(estimate, named, rise, lines, List.copyOf(assumed));
    }

    private static Set<Integer> counts(StretchEstimate estimate) {
        Set<Integer> counts = new LinkedHashSet<>();
        counts.add(estimate.fewest());
        counts.add(estimate.sections());
        counts.add(estimate.most());
        return counts;
    }

    private static LineThere there(Line line, LossErrors errors, Bounds bounds, Duty duty) {
        LineState state = LineSolver.solve(line, duty.ask());
        Known<Pressure> needed = LineSolver.neededPump(line, errors, duty.ask());
        double high_Pa = needed.value().pascals() + Reach.ONE_SIDED_95 * needed.standardErrorSi();
        Optional<Limit> first = LineLimits.of(line, state.withPump(new Pressure(high_Pa)), bounds).stream()
                .findFirst();
        boolean fit =
                line.runs().stream().noneMatch(run -> bounds.testAge(run.hose().id()) == TestAge.TOO_OLD);
        return new LineThere(needed, Known.of(state.flow()), first, fit);
    }
}
