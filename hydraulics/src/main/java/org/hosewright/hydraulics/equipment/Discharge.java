package org.hosewright.hydraulics.equipment;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;

/** An outlet of an engine with the piping that leads to it.
 *
 * @param id the company's name for it
 * @param size nominal size, where known
 * @param loss loss of the piping, where known; a result that rests on its absence says so
 */
public record Discharge(String id, Optional<Length> size, Optional<Known<PointLoss>> loss) {
    /** The loss that results use: the known one, or none. */
    public PointLoss lossOrNone() {
        return loss.isPresent() ? loss.get().value() : PointLoss.NONE;
    }
}
