package org.hosewright.hydraulics.profile;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** The pressure at a distance.
 *
 * @param at distance from the pump, or the length of a line
 * @param pressure the best estimate
 * @param half half-width of its 95 % band; 0 where none is known
 */
public record PressureAt(Length at, Pressure pressure, Pressure half) {
    public PressureAt {
        Numbers.requireNotNegative("distance", at.metres());
        Numbers.requireNotNegative("half-width", half.pascals());
    }
}
