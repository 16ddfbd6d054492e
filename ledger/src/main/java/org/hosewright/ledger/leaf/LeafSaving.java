package org.hosewright.ledger.leaf;

/** How saving a leaf ended. */
public sealed interface LeafSaving {
    /** It was saved, and is on the disk.
     *
     * @param leaf as saved
     */
    record Saved(Leaf leaf) implements LeafSaving {}

    /** Someone saved or took out another version in between; nothing was changed.
     *
     * @param stored the last version that stands in the record
     */
    record Conflict(Leaf stored) implements LeafSaving {}
}
