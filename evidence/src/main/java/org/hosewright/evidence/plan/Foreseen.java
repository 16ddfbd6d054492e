package org.hosewright.evidence.plan;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;

/** A number that the night is flown for, as well as it should be known afterwards.
 *
 * @param question the question that it answers; absent for what is decided with the answers
 * @param what the number, in words
 * @param known the number held so far with the standard error that it should have after the night; absent where the night
 *     could not tell it
 * @param answered true where its 95 % half-width is at most the step that one decides in
 */
public record Foreseen(
        Optional<Question> question, String what, Optional<Known<? extends Quantity>> known, boolean answered) {}
