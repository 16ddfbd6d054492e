package org.hosewright.ledger.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hosewright.ledger.bed.BedChanges;
import org.hosewright.ledger.kit.Kit;

/** What is no longer so of what a package's numbers rested on: the kit, tests that ran out, what lies on the rig. */
public final class Changed {
    private final KitChanges kit;
    private final Expired expired;
    private final BedChanges beds;

    /** Compares two states of the company.
     *
     * @param then the kit that the numbers rest on
     * @param made the day that they were worked out
     */
    public Changed(Kit then, LocalDate made, Staleness.Standing now) {
        kit = new KitChanges(then, now.kit());
        expired = new Expired(now.kit(), made, now.today());
        beds = new BedChanges(then, now.beds());
    }

    /** Each thing that changed for one package, as a sentence; empty where its numbers stand. */
    public List<String> reasons(String id) {
        List<String> reasons = new ArrayList<>(kit.reasons(id));
        reasons.addAll(expired.reasons(id));
        reasons.addAll(beds.reasons(id));
        return List.copyOf(reasons);
    }
}
