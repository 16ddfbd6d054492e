package org.hosewright.ledger.drill;

import java.util.List;

/** How changing a test night ended. */
public sealed interface DrillSaving {
    /** All changes were made, and are on the disk.
     *
     * @param drill as it stands now
     */
    record Saved(DrillRecord drill) implements DrillSaving {}

    /** Someone changed the same thing in between; none of the changes was made.
     *
     * @param stored the drill as it stands now
     * @param offered those changes that met a newer version
     */
    record Conflict(DrillRecord stored, List<DrillChange> offered) implements DrillSaving {
        public Conflict {
            offered = List.copyOf(offered);
        }
    }
}
