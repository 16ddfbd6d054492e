package org.hosewright.server.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.files.walk.StretchText;
import org.hosewright.files.walk.WalkText;
import org.hosewright.ground.stretch.StretchFactor;
import org.hosewright.ground.stretch.StretchRecord;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.stretch.KeptStretch;
import org.hosewright.ledger.walk.KeptWalk;

/** Hose used over hose planned, from every stretch that was laid and every walk along which hose was. */
final class CompanyFactor {
    private static final int WALKS_KEPT = 500;

    private final Leaves leaves;
    private final Cache<Version, Optional<StretchRecord>> walked =
            Caffeine.newBuilder().maximumSize(WALKS_KEPT).build();

    CompanyFactor(Leaves leaves) {
        this.leaves = leaves;
    }

    private record Version(String id, long version) {}

    /** The factor; absent before the first. */
    Optional<StretchFactor> find(Kit kit) {
        List<KeptStretch> stretches = leaves.listWhole(LeafKind.STRETCH).stream()
                .map(leaf -> StretchText.read(leaf.text()))
                .toList();
        return KeptStretch.factor(stretches, listWalked(kit.units()), kit);
    }

    /** How many of what the factor was learnt from are walks. */
    int countWalked(Kit kit) {
        return listWalked(kit.units()).size();
    }

    /** The last version of each walk and stretch, as a key of what hangs on them. */
    List<Long> seen() {
        return Stream.of(LeafKind.STRETCH, LeafKind.WALK)
                .flatMap(kind -> leaves.list(kind).stream())
                .map(head -> head.mark().entry())
                .toList();
    }

    /** A walk's text holds its whole track: it is read once for every version. */
    private List<StretchRecord> listWalked(UnitSystem units) {
        return leaves.list(LeafKind.WALK).stream()
                .flatMap(head -> Objects.requireNonNull(
                        walked.get(new Version(head.id(), head.version()), version -> find(version, units)))
                        .stream())
                .toList();
    }

    private Optional<StretchRecord> find(Version version, UnitSystem units) {
        KeptWalk walk = WalkText.read(leaves.findVersion(LeafKind.WALK, version.id(), version.version())
                .orElseThrow()
                .text());
        Length section = WalkDesk.section(units);
        return walk.measured().isEmpty() ? Optional.empty() : walk.findRecord(WalkText.track(walk), section);
    }
}
