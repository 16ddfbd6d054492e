package org.hosewright.ledger.stretch;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.reach.Reach;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitErrors;

/** One line on the pump at its duty.
 *
 * @param high the pump pressure that it needs, taken as high as it may be with 95 % confidence
 */
record OnePump(Line line, LineState state, Pressure high, Bounds bounds) {

    static OnePump of(Kit kit, HosePackage named, Line line, Optional<LocalDate> today) {
        Bounds bounds = KitBounds.of(kit, named, today);
        Ask ask = Duty.of(line, bounds.target()).ask();
        Known<Pressure> needed = LineSolver.neededPump(line, KitErrors.of(kit), ask);
        double high_Pa = needed.value().pascals() + Reach.ONE_SIDED_95 * needed.standardErrorSi();
        return new OnePump(line, LineSolver.solve(line, ask), new Pressure(high_Pa), bounds);
    }

    Pressure pump() {
        return state.pump();
    }

    Flow flow() {
        return state.flow();
    }

    /** Its limits with the pump at a pressure, gated down to its own flow. */
    Stream<Limit> limitsAt(Pressure pump) {
        return LineLimits.of(line, state.withPump(pump), bounds).stream();
    }
}
