package org.hosewright.evidence.instrument;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;

/** Where a gauge taps the water: a part of the instrument, because it decides what the needle shows. */
public sealed interface Tap {

    /** At the tip, facing the stream: reads the total pressure. */
    record Pitot() implements Tap {}

    /** On the wall of the waterway behind the tip: misses the velocity head there.
     *
     * @param inside inside diameter at the tap; where unknown, flow and reaction are withheld
     */
    record Side(Optional<Length> inside) implements Tap {}

    /** A test gauge at the discharge: does not see the loss of the piping. */
    record AtDischarge() implements Tap {}

    /** The panel gauge upstream of the discharge piping: its reading includes that loss. */
    record BeforePiping() implements Tap {}
}
