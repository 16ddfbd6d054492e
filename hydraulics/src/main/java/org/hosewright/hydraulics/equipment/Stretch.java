package org.hosewright.hydraulics.equipment;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A length of one hose, by the company's name for it; a list of them in laying order is a chain.
 *
 * @param hose id of the hose
 * @param length how much of it; above 0
 */
public record Stretch(String hose, Length length) {
    public Stretch {
        Numbers.requirePositive("length of " + hose, length.metres());
    }
}
