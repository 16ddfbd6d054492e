package org.hosewright.server.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hosewright.files.bed.BedText;
import org.hosewright.ledger.bed.RigBed;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafHead;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.leaf.Leaves;

/** What lies on the rigs, as last saved; texts are read once. */
final class BedDesk {
    /** More rigs than any county has. */
    private static final int KEPT = 500;

    private final Leaves leaves;
    private final Cache<Seen, RigBed> read =
            Caffeine.newBuilder().maximumSize(KEPT).build();

    BedDesk(Leaves leaves) {
        this.leaves = leaves;
    }

    /** One version of one rig's bed. */
    record Seen(String engine, long version) {}

    /** What lies on one rig, and who said so. */
    record Kept(LeafHead head, RigBed bed) {}

    /** The last version of each rig's bed, as a key of what hangs on them. */
    List<Seen> seen() {
        return leaves.list(LeafKind.BED).stream().map(BedDesk::seen).toList();
    }

    /** The beds of versions that were seen. */
    List<RigBed> beds(List<Seen> seen) {
        return seen.stream().map(this::bed).toList();
    }

    List<Kept> list() {
        return leaves.list(LeafKind.BED).stream()
                .map(head -> new Kept(head, bed(seen(head))))
                .toList();
    }

    /** By engine that is replaced, the one that serves in its place. */
    Map<String, String> reserves() {
        Map<String, String> reserves = new LinkedHashMap<>();
        beds(seen()).forEach(bed -> bed.reserve().ifPresent(reserve -> reserves.put(bed.engine(), reserve)));
        return reserves;
    }

    LeafSaving save(RigBed bed, long basedOn, Kit kit, Act act) {
        String text = BedText.write(bed, kit.units());
        return leaves.save(new LeafDraft(LeafKind.BED, bed.engine(), basedOn, bed.engine(), text), act);
    }

    private static Seen seen(LeafHead head) {
        return new Seen(head.id(), head.version());
    }

    private RigBed bed(Seen seen) {
        return Objects.requireNonNull(read.get(seen, wanted -> {
            Optional<Leaf> leaf = leaves.findVersion(LeafKind.BED, wanted.engine(), wanted.version());
            return BedText.read(leaf.orElseThrow().text());
        }));
    }
}
