package org.hosewright.ledger.stretch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.ground.stretch.PartKind;
import org.hosewright.ground.stretch.StretchEstimate;
import org.hosewright.ground.track.Earth;
import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Cautions;
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
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.reach.Reach;
import org.hosewright.hydraulics.reach.ReachResult;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.walk.LineThere;

/** One stretch on its way to a report. */
final class StretchReckoning {
    /** A drawing is good to this [1]. */
    private static final double DRAWN_LONGER = 1.1;

    private final KeptStretch kept;
    private final Kit kit;
    private final Optional<LocalDate> today;
    private final HosePackage named;
    private final Line level;
    private final Bounds bounds;
    private final LossErrors errors;
    private final Duty duty;

    StretchReckoning(KeptStretch kept, Kit kit, Optional<LocalDate> today) {
        this.kept = kept;
        this.kit = kit;
        this.today = today;
        this.named = PackageChain.of(kit, kept.packages());
        this.level = KitLines.of(kit, named, new Length(0));
        this.bounds = KitBounds.of(kit, named, today);
        this.errors = KitErrors.of(kit);
        this.duty = Duty.of(level, bounds.target());
    }

    StretchReport report(StretchEstimate estimate) {
        List<StretchReport.Laid> lines = new ArrayList<>();
        for (int count : counts(estimate)) {
            findLine(estimate, count).ifPresent(line -> lines.add(new StretchReport.Laid(count, there(line))));
        }
        ReachResult reach = Reach.longest(level.withRise(kept.up()), errors, bounds);
        Optional<Line> first = findLine(estimate, estimate.sections());
        Optional<HosePackage> beside = kept.second().map(id -> KitLines.get(kit.packages(), id, "second package"));
        Optional<SecondLine> second = first.flatMap(line -> beside.flatMap(
                other -> SecondLine.find(kit, new SecondLine.First(named, line), other, kept.up(), today)));
        return new StretchReport(
                estimate,
                named,
                kept.up(),
                lines,
                kit.lessReserve(reach.longestSafe(), estimate.plan().section()),
                reach.stoppedBy(),
                second,
                cautions(first, beside.isPresent() && second.isEmpty()),
                assumed(estimate));
    }

    private static Set<Integer> counts(StretchEstimate estimate) {
        Set<Integer> counts = new LinkedHashSet<>();
        counts.add(estimate.fewest());
        counts.add(estimate.sections());
        counts.add(estimate.most());
        return counts;
    }

    private Optional<Line> findLine(StretchEstimate estimate, int count) {
        double earlier_m = level.length().metres() - level.last().length().metres();
        double last_m = count * estimate.plan().section().metres() - earlier_m;
        return last_m > 0
                ? Optional.of(level.withLastLength(new Length(last_m)).withRise(kept.up()))
                : Optional.empty();
    }

    private LineThere there(Line line) {
        LineState state = LineSolver.solve(line, duty.ask());
        Known<Pressure> needed = LineSolver.neededPump(line, errors, duty.ask());
        double high_Pa = needed.value().pascals() + Reach.ONE_SIDED_95 * needed.standardErrorSi();
        Optional<Limit> first = LineLimits.of(line, state.withPump(new Pressure(high_Pa)), bounds).stream()
                .findFirst();
        boolean fit =
                line.runs().stream().noneMatch(run -> bounds.testAge(run.hose().id()) == TestAge.TOO_OLD);
        return new LineThere(needed, Optional.empty(), Known.of(state.flow()), first, Optional.empty(), fit);
    }

    private List<String> cautions(Optional<Line> line, boolean oneDischarge) {
        Set<String> cautions = new LinkedHashSet<>(kept.site().cautions());
        drawnLonger().ifPresent(cautions::add);
        InWords.unknownPiping(level.discharge()).ifPresent(cautions::add);
        line.ifPresent(there ->
                cautions.addAll(Cautions.list(there, LineSolver.solve(there, duty.ask()), bounds, kit.units())));
        cautions.addAll(StretchReport.cautions(oneDischarge));
        return List.copyOf(cautions);
    }

    /** Where the way drawn on the map is longer than what is planned to the door: hose never is shorter than a drawing. */
    private Optional<String> drawnLonger() {
        double drawn_m = 0;
        List<Position> way = kept.site().way();
        for (int i = 1; i < way.size(); i++) {
            drawn_m += Earth.distance(way.get(i - 1), way.get(i)).metres();
        }
        double planned_m = kept.parts().stream()
                .filter(part -> part.kind() == PartKind.TO_DOOR)
                .mapToDouble(part -> part.length().value().metres())
                .sum();
        QuantityShown shown = QuantityShown.of(kit.units());
        return drawn_m <= DRAWN_LONGER * planned_m
                ? Optional.empty()
                : Optional.of("The way drawn on the map is " + shown.text(new Length(drawn_m)) + ", but "
                        + shown.text(new Length(planned_m)) + " are planned to the door: look at both again.");
    }

    private List<String> assumed(StretchEstimate estimate) {
        Set<String> assumed = new LinkedHashSet<>(estimate.assumed());
        if (kept.rise().isEmpty()) {
            assumed.add("No rise is entered: taken as level.");
        }
        assumed.addAll(duty.assumed());
        assumed.addAll(errors.listAssumed(level));
        return List.copyOf(assumed);
    }
}
