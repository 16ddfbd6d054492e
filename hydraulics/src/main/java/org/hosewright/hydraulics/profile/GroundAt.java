package org.hosewright.hydraulics.profile;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** The ground under the hose at a distance.
 *
 * @param at distance from the pump along the hose
 * @param height above the pump, negative below it
 */
public record GroundAt(Length at, Length height) {
    public GroundAt {
        Numbers.requireNotNegative("distance", at.metres());
    }
}
