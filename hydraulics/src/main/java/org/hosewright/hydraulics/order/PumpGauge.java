package org.hosewright.hydraulics.order;

import java.util.Optional;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** The gauge that an ordered pressure is read on: where it taps and how far it is off.
 *
 * @param atDischarge true for a gauge behind the discharge piping
 * @param offset what it reads less what is true
 */
public record PumpGauge(boolean atDischarge, Pressure offset) {
    /** A gauge before the discharge piping that reads true. */
    public static final PumpGauge TRUE = new PumpGauge(false, new Pressure(0));

    /** What it shows while a line flows. */
    public Pressure reads(LineState state) {
        Pressure seen = atDischarge ? state.atDischargeGauge() : state.pump();
        return new Pressure(seen.pascals() + offset.pascals());
    }

    /** The pump pressure, before the piping, at which it shows a figure on a line; below 0 there is none. */
    public Pressure pump(Line line, Pressure figure) {
        Pressure seen = new Pressure(figure.pascals() - offset.pascals());
        if (!atDischarge || seen.pascals() <= 0) {
            return seen;
        }
        Discharge bare = new Discharge(line.discharge().id(), Optional.empty(), Optional.of(Known.of(PointLoss.NONE)));
        LineState behind = LineSolver.atPump(new Line(bare, line.runs(), line.nozzle(), line.setting()), seen);
        Pressure piping = line.discharge().lossOrNone().at(behind.flow());
        return new Pressure(seen.pascals() + piping.pascals());
    }
}
