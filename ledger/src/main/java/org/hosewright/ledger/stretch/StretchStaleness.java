package org.hosewright.ledger.stretch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.ground.stretch.StretchEstimate;
import org.hosewright.ground.stretch.StretchFactor;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.Changed;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderedPressure;
import org.hosewright.ledger.order.Staleness;

/** Why a stretch's sheet no longer says what is so: what it rested on when people last looked at it has changed. */
public final class StretchStaleness {
    private StretchStaleness() {}

    /** What a stretch rested on when it was kept.
     *
     * @param kit the kit as it stood
     * @param day the day
     * @param order the order in force, where there was one
     */
    public record Grounds(Kit kit, LocalDate day, Optional<Ordered> order) {}

    /** An order in force.
     *
     * @param number its number
     * @param set its pressures
     */
    public record Ordered(long number, OrderSet set) {}

    /** The company as it stands.
     *
     * @param order the order in force, where there is one
     * @param factor hose used over hose planned, where it is learnt
     */
    public record Present(Staleness.Standing standing, Optional<Ordered> order, Optional<StretchFactor> factor) {}

    /** Each thing that changed since, as a sentence; empty where the sheet stands.
     *
     * @param then what the stretch rested on
     */
    public static List<String> reasons(KeptStretch kept, Grounds then, Present now) {
        List<String> reasons = new ArrayList<>();
        var changed = new Changed(then.kit(), then.day(), now.standing());
        Set<String> packages = new LinkedHashSet<>(kept.packages());
        kept.second().ifPresent(packages::add);
        packages.forEach(id -> reasons.addAll(changed.reasons(id)));
        if (now.standing().kit().packages().keySet().containsAll(kept.packages())) {
            ordered(kept, then.order(), now).ifPresent(reasons::add);
        }
        return reasons.stream().distinct().toList();
    }

    /** What is said of the ordered pressure, where there was one and it is not that any more. */
    private static Optional<String> ordered(KeptStretch kept, Optional<Ordered> then, Present now) {
        Kit kit = now.standing().kit();
        String id = PackageChain.of(kit, kept.packages()).id();
        Length hose = StretchEstimate.of(kept.plan(kit), now.factor()).hose();
        Optional<Pressure> was = figure(then, id, hose);
        Optional<Pressure> is = figure(now.order(), id, hose);
        // A sheet from before the first order is stamped unsigned: it never gave a figure to pump by.
        if (was.isEmpty() || was.equals(is)) {
            return Optional.empty();
        }
        QuantityShown shown = QuantityShown.of(kit.units());
        String before = shown.text(was.get()) + " by order " + number(then);
        String after = is.map(pressure -> shown.text(pressure) + " by order " + number(now.order()))
                .orElse("nothing");
        return Optional.of("Ordered for it was " + before + "; now it is " + after + ".");
    }

    private static Optional<Pressure> figure(Optional<Ordered> order, String id, Length hose) {
        return order.flatMap(one -> one.set().find(id, hose)).map(OrderedPressure::figure);
    }

    private static long number(Optional<Ordered> order) {
        return order.map(Ordered::number).orElse(0L);
    }
}
