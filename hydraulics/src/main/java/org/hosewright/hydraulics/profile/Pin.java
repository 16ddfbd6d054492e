package org.hosewright.hydraulics.profile;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A reading pinned to the line where its gauge stood.
 *
 * @param at distance from the pump
 * @param pressure what was read
 * @param half half-width of its error bar; 0 draws none
 * @param label its name; empty for none
 * @param aside true where it is set aside: another shape, and a name it has is always shown
 */
public record Pin(Length at, Pressure pressure, Pressure half, String label, boolean aside) {
    public Pin {
        Numbers.requireNotNegative("distance of a reading", at.metres());
        Numbers.requireNotNegative("error of a reading", half.pascals());
    }
}
