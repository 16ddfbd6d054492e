package org.hosewright.server.api;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.walk.StretchText;
import org.hosewright.ground.stretch.StretchFactor;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.walk.Walk;
import org.hosewright.ground.walk.WalkQuestion;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.stretch.KeptStretch;
import org.hosewright.ledger.stretch.StretchReport;

/** Where stretches are worked out, with the kit in force and what the company has learnt from its own. */
final class StretchDesk {
    private final CurrentKit current;
    private final OrderDesk orders;
    private final StretchWatch watch;
    private final CompanyFactor factor;

    StretchDesk(Leaves leaves, CurrentKit current, OrderDesk orders) {
        this.current = current;
        this.orders = orders;
        this.factor = new CompanyFactor(leaves);
        this.watch = new StretchWatch(leaves, current, orders);
    }

    /** Which stretches' sheets no longer say what is so. */
    StretchWatch watch() {
        return watch;
    }

    Kit kit() {
        return current.get().document().kit();
    }

    LocalDate today() {
        return orders.today(kit());
    }

    String text(KeptStretch stretch) {
        return StretchText.write(stretch, kit().units());
    }

    StretchReport report(KeptStretch stretch) {
        return StretchReport.of(stretch, kit(), findFactor(), Optional.of(today()));
    }

    /** The way that was drawn by hand, with its sections; absent where none was. */
    Optional<Walk> findWay(KeptStretch stretch) {
        List<Fix> drawn = stretch.site().way().stream().map(Fix::of).toList();
        return drawn.size() < 2
                ? Optional.empty()
                : Optional.of(Walk.of(
                        WalkQuestion.of(Track.of("", drawn), stretch.plan(kit()).section())));
    }

    /** Hose used over hose planned, as the company's own stretches tell. */
    Optional<StretchFactor> findFactor() {
        return factor.find(kit());
    }

    /** How many of what that was learnt from are walks along which hose was laid. */
    int countWalked() {
        return factor.countWalked(kit());
    }
}
