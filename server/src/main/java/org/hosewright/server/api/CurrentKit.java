package org.hosewright.server.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Objects;
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
    /** Entries that were asked about: what stood before one never changes. */
    private static final int ENTRIES_KEPT = 5000;

    private final Cache<Long, Long> before =
            Caffeine.newBuilder().maximumSize(ENTRIES_KEPT).build();
    private final Cache<Long, Read> versions =
            Caffeine.newBuilder().maximumSize(VERSIONS_KEPT).build();

    CurrentKit(Kits kits) {
        this.kits = kits;
    }

    /** The kit as it stood before an entry of the history; empty where there was none yet. */
    Optional<Read> findBefore(long entry) {
        return find(Objects.requireNonNull(before.get(entry, this::versionBefore)));
    }

    /** The last version saved before an entry, by halves; 0 where there is none. */
    private long versionBefore(long entry) {
        long low = 0;
        long high = kits.latestVersion();
        while (low < high) {
            long middle = (low + high + 1) / 2;
            boolean earlier = kits.findRevision(middle)
                    .filter(revision -> revision.mark().entry() < entry)
                    .isPresent();
            low = earlier ? middle : low;
            high = earlier ? high : middle - 1;
        }
        return low;
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
