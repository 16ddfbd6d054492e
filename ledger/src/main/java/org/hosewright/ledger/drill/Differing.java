package org.hosewright.ledger.drill;

import java.util.List;

/** A finding about the night as a whole: a number that differs from what was held before it.
 *
 * @param what the number, in words
 * @param kind {@code night}, {@code hose}, {@code drift}, {@code book} or {@code cannot-tell}
 * @param also other kinds that are not excluded
 * @param says the finding as a sentence
 * @param check what to go and look at
 */
public record Differing(String what, String kind, List<String> also, String says, String check) {
    public Differing {
        also = List.copyOf(also);
    }
}
