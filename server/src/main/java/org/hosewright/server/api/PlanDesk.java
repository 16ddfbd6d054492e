package org.hosewright.server.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Objects;
import java.util.Optional;
import org.hosewright.files.plan.PlanText;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.plan.KeptPlan;
import org.hosewright.ledger.plan.PlanAnalysis;
import org.hosewright.ledger.plan.PlanAsked;
import org.hosewright.ledger.plan.PlanReport;
import org.hosewright.server.guard.Refusal;

/** Where test nights are planned, and kept plans are worked out again with the kit that they were made with. */
final class PlanDesk {
    /** What is said of a plan whose kit is another by now. */
    static final String CHANGED = "The kit has changed since this was planned. Plan it again before you fly it.";

    /** What is said of a plan that this program would make otherwise. */
    static final String OTHERWISE = "This program plans the night otherwise than the one that the plan was kept with."
            + " What was kept is in the plan's result file. Plan it again before you fly it.";

    private static final int KEPT = 32;

    private final Leaves leaves;
    private final CurrentKit current;
    private final Cache<State, PlanReport> reports =
            Caffeine.newBuilder().maximumSize(KEPT).build();

    PlanDesk(Leaves leaves, CurrentKit current) {
        this.leaves = leaves;
        this.current = current;
    }

    /** What a plan hangs on. */
    private record State(PlanAsked asked, long kitVersion) {}

    /** A plan as kept.
     *
     * @param leaf as saved
     * @param plan what it holds
     * @param changed true where the kit is not the one that it was made with
     */
    record Kept(Leaf leaf, KeptPlan plan, boolean changed) {}

    Kit kit() {
        return current.get().document().kit();
    }

    long kitVersion() {
        return current.get().version();
    }

    Kept get(String id) {
        Leaf leaf = leaves.find(LeafKind.PLAN, id).orElseThrow(() -> Refused.unknown("plan"));
        KeptPlan plan = PlanText.read(leaf.text());
        return new Kept(leaf, plan, plan.kitVersion() != kitVersion());
    }

    /** A plan that may be flown.
     *
     * @throws Refusal the kit has changed since, or the program plans otherwise by now
     */
    Kept unchanged(String id) {
        Kept kept = get(id);
        findChange(kept).ifPresent(says -> {
            throw new Refusal(409, "Plan it again", says);
        });
        return kept;
    }

    /** Why a plan no longer stands as it was kept, as a sentence; empty while it does. */
    Optional<String> findChange(Kept kept) {
        if (!kept.plan().isAnsweredAlike(ResultJson.plan(report(kept.plan())))) {
            return Optional.of(OTHERWISE);
        }
        return kept.changed() ? Optional.of(CHANGED) : Optional.empty();
    }

    /** A plan to be kept, with the answer that it has now. */
    KeptPlan worked(String name, PlanAsked asked) {
        return new KeptPlan(name, kitVersion(), asked, ResultJson.plan(report(asked)), Optional.empty());
    }

    /** The plan as the company's kit stands. */
    PlanReport report(PlanAsked asked) {
        return report(asked, current.get());
    }

    /** The plan as it was kept. */
    PlanReport report(KeptPlan plan) {
        return report(plan.asked(), current.find(plan.kitVersion()).orElseThrow(() -> Refused.unknown("kit revision")));
    }

    private PlanReport report(PlanAsked asked, CurrentKit.Read kit) {
        return Objects.requireNonNull(reports.get(
                new State(asked, kit.version()),
                state -> PlanAnalysis.of(kit.document().kit(), asked)));
    }
}
