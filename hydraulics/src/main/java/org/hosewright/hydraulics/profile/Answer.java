package org.hosewright.hydraulics.profile;

import java.util.List;

/** The number that stands large at an end of the line.
 *
 * @param number the number alone; empty where it is not known
 * @param unit its unit
 * @param beside short lines below it: how well it is known, what goes with it
 */
public record Answer(String number, String unit, List<String> beside) {
    /** No answer at this end. */
    public static final Answer NONE = new Answer("", "", List.of());

    public Answer {
        beside = List.copyOf(beside);
    }

    /** An answer from a number with its unit behind it, as in "190 psi". */
    public static Answer of(String quantity, List<String> beside) {
        int space = quantity.indexOf(' ');
        return space < 0
                ? new Answer(quantity, "", beside)
                : new Answer(quantity.substring(0, space), quantity.substring(space + 1), beside);
    }
}
