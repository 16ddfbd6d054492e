package org.hosewright.hydraulics.profile;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A run of one hose as it is drawn.
 *
 * @param length of it; above 0
 * @param section from coupling to coupling; above 0
 * @param label its name; empty for none
 */
public record HoseRun(Length length, Length section, String label) {
    public HoseRun {
        Numbers.requirePositive("length of hose", length.metres());
        Numbers.requirePositive("section of hose", section.metres());
    }
}
