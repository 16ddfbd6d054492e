package org.hosewright.evidence.pool;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;

/** The loss of a type of hose, all nights together, as of the last night.
 *
 * @param type its name
 * @param loss the mean of its batches; absent where the nights do not tell it
 * @param anotherBatch a batch that was never flown: the same number, known as much less as batches differ
 * @param batches those that were flown
 * @param worth what each night is worth to the mean, most first
 * @param beliefShare the share that was believed before any night
 * @param drift how it changes from year to year
 */
public record TypeLoss(
        String type,
        Optional<Known<HoseLoss>> loss,
        Optional<Known<HoseLoss>> anotherBatch,
        List<BatchLoss> batches,
        List<NightShare> worth,
        double beliefShare,
        YearDrift drift) {
    public TypeLoss {
        batches = List.copyOf(batches);
        worth = List.copyOf(worth);
    }
}
