package org.hosewright.evidence.pool;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;

/** The loss of one batch, all nights together, as of the last night.
 *
 * @param batch its name
 * @param loss absent where the nights do not tell it
 * @param nights the nights that flew it, by name
 */
public record BatchLoss(String batch, Optional<Known<HoseLoss>> loss, List<String> nights) {
    public BatchLoss {
        nights = List.copyOf(nights);
    }
}
