package org.hosewright.ground.stretch;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A stretch that was laid, against what had been reckoned for it.
 *
 * @param planned hose reckoned before, reserve and rounding apart; above 0
 * @param used hose that lay on the ground and in the building; above 0
 * @param logError standard error of the logarithm of one over the other that measuring leaves; 0 where both were measured
 */
public record StretchRecord(Length planned, Length used, double logError) {
    public StretchRecord {
        Numbers.requirePositive("planned hose", planned.metres());
        Numbers.requirePositive("used hose", used.metres());
        Numbers.requireNotNegative("error of the record", logError);
    }

    public static StretchRecord of(Length planned, Length used) {
        return new StretchRecord(planned, used, 0);
    }

    double logFactor() {
        return Math.log(used.metres() / planned.metres());
    }

    double logVariance() {
        return logError * logError;
    }
}
