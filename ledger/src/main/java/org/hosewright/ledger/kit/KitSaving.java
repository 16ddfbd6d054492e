package org.hosewright.ledger.kit;

/** How saving the kit ended. */
public sealed interface KitSaving {
    /** The kit was saved, and is on the disk.
     *
     * @param revision as saved
     */
    record Saved(KitRevision revision) implements KitSaving {}

    /** Someone saved another kit in between; nothing was changed.
     *
     * @param stored the kit as it stands now
     * @param offered the text that was to be saved
     */
    record Conflict(KitRevision stored, String offered) implements KitSaving {}
}
