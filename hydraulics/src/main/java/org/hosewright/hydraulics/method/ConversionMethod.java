package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** The loss of larger hose from that of 2 1/2 in hose at the same flow.
 *
 * @source Fire Engineering, "Determining engine pressures": 3 in 0.4, 3 1/2 in 0.17 of it
 * @validFor rubber-lined hose of old make, with the 2 Q^2 + Q rule
 */
public enum ConversionMethod {
    THREE_INCH(0.4),
    THREE_AND_HALF_INCH(0.17);

    private final double share;

    ConversionMethod(double share) {
        this.share = share;
    }

    /** What it loses where 2 1/2 in hose loses so much. */
    public Pressure of(Pressure inTwoAndHalfInch) {
        return new Pressure(share * Numbers.requireNotNegative("loss", inTwoAndHalfInch.pascals()));
    }
}
