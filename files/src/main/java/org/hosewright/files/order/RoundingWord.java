package org.hosewright.files.order;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.order.Rounding;

/** How figures were rounded, in the format's words. */
public final class RoundingWord {
    private RoundingWord() {}

    public static String of(Rounding.Way way) {
        return way == Rounding.Way.UP ? "up" : "nearest";
    }

    /** The way that a word names.
     *
     * @throws InvalidInput it names none
     */
    public static Rounding.Way way(String word) {
        return switch (word) {
            case "nearest" -> Rounding.Way.NEAREST;
            case "up" -> Rounding.Way.UP;
            default -> throw new InvalidInput("rounding", word, "nearest or up", "");
        };
    }
}
