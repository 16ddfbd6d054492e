package org.hosewright.ground.walk;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A rise entered by hand: up or down with a height, never a bare sign.
 *
 * @param direction from the start to the end of the walk
 * @param height how much; 0 or more
 * @param standardError how well it is known
 */
public record EnteredRise(Direction direction, Length height, Length standardError) {
    /** Which way. */
    public enum Direction {
        UP("up", 1),
        DOWN("down", -1);

        private final String word;
        private final int sign;

        Direction(String word, int sign) {
            this.word = word;
            this.sign = sign;
        }

        public String word() {
            return word;
        }
    }

    public EnteredRise {
        Numbers.requireNotNegative("height of a rise", height.metres());
        Numbers.requireNotNegative("standard error of a rise", standardError.metres());
    }

    /** The end above the start, negative downhill. */
    public Length rise() {
        return new Length(direction.sign * height.metres());
    }
}
