package org.hosewright.evidence.joint;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** Numbers inside sentences, in the company's units and no finer than a needle is read.
 *
 * @param units the company's units
 */
public record Says(UnitSystem units) {
    public String pressure(double pressure_Pa) {
        return text(new Pressure(pressure_Pa));
    }

    public String flow(double flow_m3s) {
        return text(new Flow(flow_m3s));
    }

    public String length(double length_m) {
        return text(new Length(length_m));
    }

    public String text(Quantity quantity) {
        return QuantityShown.of(units).text(quantity);
    }

    /** A share in per cent, to a tenth below 10. */
    public static String percent(double share) {
        double percent = 100 * Math.abs(share);
        return Numbers.plain(Numbers.toNearest(percent, percent < 10 ? 0.1 : 1)) + " %";
    }
}
