package org.hosewright.ledger.leaf;

import java.util.List;
import java.util.Optional;
import org.hosewright.ledger.history.Act;

/** The leaves of the company's record. Each method is one transaction; what it returns is durable. */
public interface Leaves {
    /** The last version of each leaf of a kind, last saved first, without those taken out. */
    List<LeafHead> list(LeafKind kind);

    /** As {@link #list}, with their content: for kinds whose leaves are few and small. */
    List<Leaf> listWhole(LeafKind kind);

    /** The last version; empty where there never was one or it was taken out. */
    Optional<Leaf> find(LeafKind kind, String id);

    /** One version, also of a leaf taken out since. */
    Optional<Leaf> findVersion(LeafKind kind, String id, long version);

    /** Saves a leaf as its next version. A leaf taken out comes back where the draft is based on its last version.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput there never was the version the draft is based on
     */
    LeafSaving save(LeafDraft draft, Act act);

    /** Takes a leaf out: it is no longer listed or found, and every version stays in the record.
     *
     * @param basedOn the version that the person saw
     * @throws org.hosewright.hydraulics.error.InvalidInput there is no such leaf, or there never was such a version
     */
    LeafSaving takeOut(LeafKind kind, String id, long basedOn, Act act);
}
