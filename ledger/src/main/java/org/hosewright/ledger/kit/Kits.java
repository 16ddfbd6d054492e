package org.hosewright.ledger.kit;

import java.util.Optional;
import org.hosewright.ledger.history.Act;

/** The company's kit through time. Each method is one transaction; what it returns is durable. */
public interface Kits {
    /** The kit as it stands; empty until the first is saved. */
    Optional<KitRevision> findLatest();

    /** The number of the last version; 0 until the first is saved. */
    long latestVersion();

    /** The kit as it stood at one version. */
    Optional<KitRevision> findRevision(long version);

    /** Saves a whole kit text as the next version.
     *
     * @param text the kit in the open format, already checked by the caller
     * @param basedOn the version the text was made from; 0 for the first kit
     */
    KitSaving save(String text, long basedOn, Act act);
}
