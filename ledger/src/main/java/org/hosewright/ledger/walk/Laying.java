package org.hosewright.ledger.walk;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.ground.walk.SectionMark;
import org.hosewright.ground.walk.Walk;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.line.Slopes;
import org.hosewright.hydraulics.order.PumpGauge;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.reach.Reach;
import org.hosewright.ledger.card.PanelGauge;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;
import org.hosewright.ledger.line.KitLines;

/** A package laid along a way, with as much of its last hose as reaches a mark. */
final class Laying {
    private final Walk walk;
    private final Line level;
    private final LossErrors errors;
    private final Bounds bounds;
    private final Duty duty;
    private final OrderedFigures ordered;
    private final PumpGauge gauge;
    private final GroundLine ground;

    Laying(Walk walk, Kit kit, HosePackage named, OrderedFigures ordered, Optional<LocalDate> today) {
        this.walk = walk;
        this.level = KitLines.of(kit, named, new Length(0));
        this.errors = KitErrors.of(kit);
        this.bounds = KitBounds.of(kit, named, today);
        this.duty = Duty.of(level, bounds.target());
        this.ordered = hose -> ordered.find(hose).or(named::ordered);
        this.gauge = PanelGauge.of(kit, KitLines.get(kit.engines(), named.engine(), "engine"))
                .sight();
        this.ground = new GroundLine(walk.way());
    }

    Duty duty() {
        return duty;
    }

    LossErrors errors() {
        return errors;
    }

    Bounds bounds() {
        return bounds;
    }

    /** The line on the ground with its tip at a mark; absent where its earlier hoses already reach further. */
    Optional<Line> findLine(SectionMark mark) {
        double earlier_m = level.length().metres() - level.last().length().metres();
        double last_m = mark.hose().metres() - earlier_m;
        return last_m > 0 ? Optional.of(ground.along(level.withLastLength(new Length(last_m)))) : Optional.empty();
    }

    SectionThere at(SectionMark mark) {
        return new SectionThere(mark, findLine(mark).map(this::there));
    }

    private LineThere there(Line line) {
        LineState state = LineSolver.solve(line, duty.ask());
        Known<Pressure> needed = withRise(LineSolver.neededPump(line, errors, duty.ask()));
        double high_Pa = needed.value().pascals() + Reach.ONE_SIDED_95 * needed.standardErrorSi();
        Optional<Pressure> figure = ordered.find(line.length());
        Optional<Limit> first = most(LineLimits.of(line, state.withPump(new Pressure(high_Pa)), bounds).stream());
        Stream<Limit> atOrdered = figure.map(pressure -> gauge.pump(line, pressure)).stream()
                .filter(pump -> pump.pascals() > 0)
                .flatMap(pump -> LineLimits.of(line, LineSolver.atPump(line, pump), bounds).stream());
        boolean fit =
                line.runs().stream().noneMatch(run -> bounds.testAge(run.hose().id()) == TestAge.TOO_OLD);
        return new LineThere(needed, figure, flow(line, state, figure), first, most(atOrdered), fit);
    }

    private static Optional<Limit> most(Stream<Limit> limits) {
        return limits.max(Comparator.comparingDouble(Limit::used));
    }

    /** The flow that the ordered pressure gives, else that of the duty. */
    private Known<Flow> flow(Line line, LineState state, Optional<Pressure> figure) {
        if (figure.isEmpty()) {
            return Known.of(state.flow());
        }
        Known<Flow> delivered = LineSolver.delivered(line, errors, gauge.pump(line, figure.get()));
        double perPump = delivered.value().cubicMetresPerSecond() > 0
                ? 1 / Slopes.of(line, delivered.value()).pumpPerFlow()
                : 0;
        double error = norm(delivered.standardErrorSi(), perPump * riseError_Pa());
        return error > 0 ? Known.of(delivered.value(), new Flow(error)) : delivered;
    }

    private Known<Pressure> withRise(Known<Pressure> needed) {
        double error_Pa = norm(needed.standardErrorSi(), riseError_Pa());
        return error_Pa > 0 ? Known.of(needed.value(), new Pressure(error_Pa)) : needed;
    }

    private double riseError_Pa() {
        return Constants.WATER_PA_PER_M * walk.rise().up().standardErrorSi();
    }

    private static double norm(double one, double other) {
        return Math.sqrt(one * one + other * other);
    }
}
