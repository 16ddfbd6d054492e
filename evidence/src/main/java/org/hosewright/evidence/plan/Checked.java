package org.hosewright.evidence.plan;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** The check of one planned reading against every limit, before anybody stands there.
 *
 * @param means the night's gear and bounds
 */
record Checked(Means means) {
    /** Idle pressure of a pump. @source judgement: most idle near this; only the foretold reading hangs on it */
    static final Pressure IDLE = Pressure.ofPsi(50);

    /** A reading with water flowing; the pump is taken at the upper 95 % of what the line may need. */
    TestPoint flowing(int lay, Line line, Ask ask, String gauge) {
        LineState state = LineSolver.solve(line, ask);
        Known<Pressure> needed = LineSolver.neededPump(line, means.errors(), ask);
        Pressure most = new Pressure(needed.value().pascals() + QuantityShown.HALF_WIDTH * needed.standardErrorSi());
        List<Limit> limits = LineLimits.of(line, state.withPump(most), means.bounds());
        return new TestPoint(lay, line, false, gauge, state, most, never(limits, state.withPump(most)), limits);
    }

    /** A reading with the nozzle shut and the pump idling. */
    TestPoint still(int lay, Line line, String gauge) {
        Pressure none = new Pressure(0);
        double lift_Pa = LineSolver.atFlow(line, new Flow(0)).rise().pascals();
        LineState state = new LineState(
                IDLE,
                new Flow(0),
                new Pressure(IDLE.pascals() - lift_Pa),
                new Force(0),
                none,
                none,
                none,
                new Pressure(lift_Pa));
        List<Limit> limits = LineLimits.of(line, state, means.bounds());
        return new TestPoint(lay, line, true, gauge, state, IDLE, never(limits, state), limits);
    }

    /** The highest pump pressure at which every limit on pressure still holds. */
    private Optional<Pressure> never(List<Limit> limits, LineState state) {
        Optional<Pressure> least = Optional.empty();
        for (Limit limit : limits) {
            if (limit.kind() == LimitKind.PUMP) {
                continue;
            }
            Optional<Pressure> most = LineLimits.findMostPump(limit, state, means.bounds());
            if (most.isPresent()
                    && (least.isEmpty() || most.get().pascals() < least.get().pascals())) {
                least = most;
            }
        }
        return least;
    }
}
