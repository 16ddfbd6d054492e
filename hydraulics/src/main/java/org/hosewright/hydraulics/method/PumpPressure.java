package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Pressure;

/** Pump pressure as a sum: tip, friction, appliances and elevation.
 *
 * @param tip pressure at the tip
 * @param friction loss in hose
 * @param appliances loss in appliances
 * @param elevation pressure of the rise, negative downhill
 * @source Fire Engineering, Spurgeon, "Every Pump Operator's Basic Equation", October 2012
 */
public record PumpPressure(Pressure tip, Pressure friction, Pressure appliances, Pressure elevation) {

    public Pressure sum() {
        return new Pressure(tip.pascals() + friction.pascals() + appliances.pascals() + elevation.pascals());
    }

    /** What the pump itself adds to water that comes under pressure. */
    public Pressure net(Pressure intake) {
        return new Pressure(sum().pascals() - intake.pascals());
    }
}
