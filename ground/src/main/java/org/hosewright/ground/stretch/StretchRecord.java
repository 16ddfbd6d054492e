package org.hosewright.ground.stretch;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A stretch that was laid, against what had been reckoned for it.
 *
 * @param planned hose reckoned before, reserve and rounding apart; above 0
 * @param used hose that lay on the ground and in the building; above 0
 */
public record StretchRecord(Length planned, Length used) {
    public StretchRecord {
        Numbers.requirePositive("planned hose", planned.metres());
        Numbers.requirePositive("used hose", used.metres());
    }

    double logFactor() {
        return Math.log(used.metres() / planned.metres());
    }
}
