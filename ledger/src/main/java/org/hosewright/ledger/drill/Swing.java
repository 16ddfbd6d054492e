package org.hosewright.ledger.drill;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Known;

/** How far one number of a night hangs on single readings.
 *
 * @param what the number, in words
 * @param reading id of the reading whose leaving out moves it most; absent where the number would be known without none
 * @param without the number without that reading
 * @param untoldWithout ids of the readings without which it could not be told
 * @param says both as a sentence or two
 */
public record Swing(
        String what, Optional<String> reading, Optional<Known<?>> without, List<String> untoldWithout, String says) {
    public Swing {
        untoldWithout = List.copyOf(untoldWithout);
    }
}
