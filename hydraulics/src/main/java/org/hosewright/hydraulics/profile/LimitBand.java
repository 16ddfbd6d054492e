package org.hosewright.hydraulics.profile;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A pressure that must not be passed along a part of the line.
 *
 * @param pressure the limit; above 0
 * @param from where the part begins, from the pump
 * @param to where it ends; cut to the end of the drawing
 * @param label the limit's name with its number
 */
public record LimitBand(Pressure pressure, Length from, Length to, String label) {
    public LimitBand {
        Numbers.requirePositive("limit", pressure.pascals());
        Numbers.requireNotNegative("start of a limit", from.metres());
        if (to.metres() <= from.metres()) {
            throw new InvalidInput("end of a limit", Numbers.plain(to.metres()) + " m", "more than its start", "");
        }
    }

    /** A limit along the whole of a length. */
    public static LimitBand along(Pressure pressure, Length length, String label) {
        return new LimitBand(pressure, new Length(0), length, label);
    }
}
