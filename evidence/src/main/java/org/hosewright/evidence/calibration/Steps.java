package org.hosewright.evidence.calibration;

import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The steps that one decides in.
 *
 * @param pump the step that pump pressures are ordered in
 * @param flow the step that flows are wanted in
 */
public record Steps(Pressure pump, Flow flow) {
    /** The steps of a company's units. @source 5 psi or 50 kPa: the trade's; 5 gpm or 20 L/min: judgement */
    public static Steps of(UnitSystem units) {
        Flow flow = units == UnitSystem.US ? Flow.ofGpm(5) : Flow.ofLitresPerMinute(20);
        return new Steps(Rounding.of(units, Rounding.Way.NEAREST).step(), flow);
    }
}
