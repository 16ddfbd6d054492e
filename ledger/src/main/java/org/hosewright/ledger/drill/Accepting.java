package org.hosewright.ledger.drill;

import org.hosewright.ledger.kit.KitRevision;

/** How taking over a night's numbers ended. */
public sealed interface Accepting {
    /** The kit holds the numbers and the drill is marked; both are on the disk.
     *
     * @param drill as it stands now
     * @param kit the new kit
     */
    record Accepted(DrillRecord drill, KitRevision kit) implements Accepting {}

    /** The drill was changed after the person looked at its numbers; nothing was changed.
     *
     * @param stored the drill as it stands now
     */
    record DrillChanged(DrillRecord stored) implements Accepting {}

    /** The kit was changed in between; nothing was changed.
     *
     * @param stored the kit as it stands now
     * @param offered the kit text that was to be saved
     */
    record KitChanged(KitRevision stored, String offered) implements Accepting {}
}
