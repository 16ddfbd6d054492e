package org.hosewright.hydraulics.line;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Pressure;

/** A line while it flows: pump pressure = tip + hose + piping + appliances + rise.
 *
 * @param pump pressure at a gauge that taps before the discharge piping, its loss included
 * @param flow flow at the tip
 * @param tip total pressure at the tip; below 0 where the water stops short of it by that much
 * @param reaction on the people who hold the nozzle
 * @param hoseLoss loss of all hose
 * @param pipingLoss loss of the discharge piping
 * @param applianceLoss loss of all appliances
 * @param rise pressure that the rise takes, negative downhill
 */
public record LineState(
        Pressure pump,
        Flow flow,
        Pressure tip,
        Force reaction,
        Pressure hoseLoss,
        Pressure pipingLoss,
        Pressure applianceLoss,
        Pressure rise) {

    /** What a gauge at the discharge reads, behind the piping. */
    public Pressure atDischargeGauge() {
        return new Pressure(pump.pascals() - pipingLoss.pascals());
    }

    /** The same flow with the pump held at another pressure, as at the edge of a band. */
    public LineState withPump(Pressure pump) {
        return new LineState(pump, flow, tip, reaction, hoseLoss, pipingLoss, applianceLoss, rise);
    }
}
