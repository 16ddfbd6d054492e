package org.hosewright.evidence.pool;

import org.hosewright.evidence.joint.Priors;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Numbers;

/** Hose of one make and size, whichever batch.
 *
 * @param id its name
 * @param loss what was believed of its loss before any night; above 0
 * @param deviation of that belief's logarithm; above 0
 */
public record HoseType(String id, HoseLoss loss, double deviation) {
    public HoseType {
        Numbers.requirePositive("loss of " + id, loss.r());
        Numbers.requirePositive("deviation of the loss of " + id, deviation);
    }

    /** A type of which no more is believed than a book or a maker says. */
    public static HoseType of(String id, HoseLoss loss) {
        return new HoseType(id, loss, Priors.BOOK_HOSE);
    }
}
