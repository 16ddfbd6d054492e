package org.hosewright.ledger.history;

import java.util.Optional;

/** What proving the history's chain found.
 *
 * @param entries how many entries hold, from the first
 * @param last hash of the last entry that holds; written down elsewhere, it proves that nothing was cut off or redone
 * @param broken the first link that does not hold, where there is one
 */
public record Audit(long entries, String last, Optional<Broken> broken) {

    /** A link that does not hold.
     *
     * @param entry number of the entry
     * @param why what is wrong with it, as a sentence
     */
    public record Broken(long entry, String why) {}

    public boolean holds() {
        return broken.isEmpty();
    }
}
