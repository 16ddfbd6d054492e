package org.hosewright.server.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.kit.Revision;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.Kits;
import org.hosewright.server.guard.Refusal;

/** The kit through time, each version's text read once as long as it is asked for. */
final class CurrentKit {
    private static final int VERSIONS_KEPT = 8;

    private final Kits kits;
    private final Cache<Long, Read> versions =
            Caffeine.newBuilder().maximumSize(VERSIONS_KEPT).build();

    CurrentKit(Kits kits) {
        this.kits = kits;
    }

    /** A saved kit with its text read.
     *
     * @param revision as saved
     * @param document what it says
     * @param code the short code of what it says
     */
    record Read(KitRevision revision, KitDocument document, String code) {
        long version() {
            return revision.version();
        }
    }

    Optional<Read> find() {
        return find(kits.latestVersion());
    }

    /** The kit as it stood at one version. */
    Optional<Read> find(long version) {
        Optional<Read> known = Optional.ofNullable(versions.getIfPresent(version));
        if (known.isPresent()) {
            return known;
        }
        Optional<Read> read = kits.findRevision(version).map(CurrentKit::read);
        read.ifPresent(kit -> versions.put(version, kit));
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
        KitDocument document = KitDocument.of(revision.text(), "kit");
        return new Read(revision, document, Revision.of(document.kit()));
    }
}
