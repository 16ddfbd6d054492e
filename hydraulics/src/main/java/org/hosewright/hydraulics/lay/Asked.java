package org.hosewright.hydraulics.lay;

import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Numbers;

/** The flow that an open tip is asked for. */
final class Asked {
    /** How near the held pressure counts as it [1]: the last digits of a unit conversion. */
    private static final double SAME_PRESSURE = 1e-9;

    private Asked() {}

    /** The flow [m3/s].
     *
     * @throws InvalidInput not above 0, or the pressure that an automatic tip holds, which says nothing about its flow
     */
    static double flow_m3s(End.Outlet outlet, Ask ask) {
        if (ask instanceof Ask.AtFlow flow) {
            return Numbers.requirePositive("flow", flow.flow().cubicMetresPerSecond());
        }
        double tip_Pa = Numbers.requirePositive(
                "tip pressure", ((Ask.AtTip) ask).pressure().pascals());
        if (outlet.tip() instanceof Automatic automatic) {
            double held_Pa = automatic.holds().pascals();
            if (Math.abs(tip_Pa - held_Pa) <= SAME_PRESSURE * held_Pa) {
                throw new InvalidInput(
                        "tip pressure of " + outlet.nozzle().id(),
                        "the pressure it holds",
                        "a flow: within its band an automatic tip's pressure says nothing about the flow",
                        "");
            }
        }
        return outlet.tip().flow_m3s(tip_Pa);
    }
}
