package org.hosewright.store;

import java.util.List;
import java.util.Random;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;

/** Keeps walks, stretch sheets, plans and what lies on rigs as fast as it can, changes them and takes them out.
 *
 * <p>Lines: "leaf KIND ID VERSION ENTRY SUM". Each text ends with the sum of what stands before it.
 */
final class BusyLeaves {
    static final List<LeafKind> KINDS =
            List.of(LeafKind.WALK, LeafKind.STRETCH, LeafKind.PLAN, LeafKind.BED, LeafKind.PICTURE);
    private static final int VERSIONS = 3;

    private final Store store;
    private final Random random;
    private final Act act;

    BusyLeaves(Store store, Random random, Act act) {
        this.store = store;
        this.random = random;
        this.act = act;
    }

    /** One leaf through some versions, taken out in the end now and then. */
    void keep() {
        LeafKind kind = KINDS.get(random.nextInt(KINDS.size()));
        Leaf leaf = saved(store.leaves().save(LeafDraft.ofNew(kind, "under load", text()), act));
        for (int version = 1; version < VERSIONS; version++) {
            var next = new LeafDraft(kind, leaf.id(), leaf.version(), "under load " + version, text());
            leaf = saved(store.leaves().save(next, act));
        }
        if (random.nextInt(3) == 0) {
            saved(store.leaves().takeOut(kind, leaf.id(), leaf.version(), act));
        }
    }

    private static Leaf saved(LeafSaving saving) {
        Leaf leaf = ((LeafSaving.Saved) saving).leaf();
        BusyWriter.say("leaf " + leaf.kind().name() + " " + leaf.id() + " " + leaf.version() + " "
                + leaf.mark().entry() + " " + sum(leaf));
        return leaf;
    }

    static long sum(Leaf leaf) {
        return BusyWriter.sum(leaf.title() + leaf.text());
    }

    static boolean isWhole(Leaf leaf) {
        int at = leaf.text().lastIndexOf('\n') + 1;
        return leaf.text()
                .substring(at)
                .equals(Long.toString(BusyWriter.sum(leaf.text().substring(0, at))));
    }

    private String text() {
        String fixes = "a fix of a walk\n".repeat(20 + random.nextInt(1000));
        return fixes + BusyWriter.sum(fixes);
    }
}
