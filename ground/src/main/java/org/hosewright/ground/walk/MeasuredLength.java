package org.hosewright.ground.walk;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A length of the way that was measured, from its start.
 *
 * @param length what was measured
 * @param standardError how well
 * @param by what it was measured with
 * @param at index of the fix at which the measured length ends; the last one for the whole way
 */
public record MeasuredLength(Length length, Length standardError, By by, int at) {
    /** What a length is measured with. */
    public enum By {
        HOSE_LAID("hose laid"),
        TAPE("tape"),
        WHEEL("measuring wheel");

        private final String word;

        By(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public MeasuredLength {
        Numbers.requirePositive("measured length", length.metres());
        Numbers.requireNotNegative("standard error of a measured length", standardError.metres());
        Numbers.requireNotNegative("end of a measured length", at);
    }
}
