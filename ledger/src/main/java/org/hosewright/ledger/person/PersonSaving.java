package org.hosewright.ledger.person;

/** How saving a person ended. */
public sealed interface PersonSaving {
    /** It was saved, and is on the disk.
     *
     * @param person as saved
     */
    record Saved(Person person) implements PersonSaving {}

    /** Somebody changed the person in between; nothing was changed.
     *
     * @param stored as it stands
     */
    record Conflict(Person stored) implements PersonSaving {}
}
