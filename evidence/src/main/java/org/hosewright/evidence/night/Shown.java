package org.hosewright.evidence.night;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** What the needles showed at one steady moment, exactly as read.
 *
 * @param pump the pump gauge
 * @param tip the tip gauge, where read
 * @param flow the flow meter, where read
 * @param mid an in-line gauge, where read
 * @param intake the intake gauge, where read
 */
public record Shown(
        Pressure pump, Optional<Pressure> tip, Optional<Flow> flow, Optional<Mid> mid, Optional<Pressure> intake) {

    /** An in-line gauge's reading.
     *
     * @param pressure static pressure in the hose there
     * @param fromPump hose length from the discharge to the gauge
     */
    public record Mid(Pressure pressure, Length fromPump) {}
}
