package org.hosewright.server.api;

import java.util.Optional;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.Kits;
import org.hosewright.server.guard.Refusal;

/** The kit as it stands, read once for each version. */
final class CurrentKit {
    private final Kits kits;
    private volatile Optional<Read> last = Optional.empty();

    CurrentKit(Kits kits) {
        this.kits = kits;
    }

    /** A saved kit with its text read.
     *
     * @param revision as saved
     * @param document what it says
     */
    record Read(KitRevision revision, KitDocument document) {}

    Optional<Read> find() {
        Optional<KitRevision> latest = kits.findLatest();
        Optional<Read> known = last;
        if (latest.isPresent()
                && known.map(read -> read.revision().version()).equals(latest.map(KitRevision::version))) {
            return known;
        }
        Optional<Read> read = latest.map(CurrentKit::read);
        last = read;
        return read;
    }

    /** The kit.
     *
     * @throws Refusal there is none yet
     */
    Read get() {
        return find().orElseThrow(() ->
                new Refusal(404, "No kit yet", "There is no kit yet; write or import one on the kit page."));
    }

    private static Read read(KitRevision revision) {
        return new Read(revision, KitDocument.of(revision.text(), "kit"));
    }
}
