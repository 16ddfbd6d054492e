package org.hosewright.server.api;

import java.time.LocalDate;
import java.util.Optional;
import org.hosewright.files.walk.StretchText;
import org.hosewright.ground.stretch.StretchFactor;
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

    /** Hose used over hose planned, as the company's own stretches tell. */
    Optional<StretchFactor> findFactor() {
        return factor.find(kit());
    }

    /** How many of what that was learnt from are walks along which hose was laid. */
    int countWalked() {
        return factor.countWalked(kit());
    }
}
