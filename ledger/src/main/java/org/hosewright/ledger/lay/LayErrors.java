package org.hosewright.ledger.lay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.lay.LaySpread;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitErrors;

/** How well a lay's figures are known from the errors of the kit's losses. */
final class LayErrors {
    private final Laid laid;
    private final LossErrors errors;
    private final Optional<AtTip> only;
    private final LaySpread spread;

    LayErrors(Kit kit, Laid laid, LayState state) {
        this.laid = laid;
        this.errors = KitErrors.of(kit);
        this.spread = LaySpread.of(laid.lay(), laid.ask(), state, errors);
        this.only = laid.findOnlyTip(state);
    }

    Known<Pressure> pump() {
        return only.map(tip -> LineSolver.neededPump(tip.path(), errors, laid.ask()))
                .orElse(spread.pump());
    }

    /** The flow of each open tip by its name. */
    Map<String, Known<Flow>> flows() {
        Map<String, Known<Flow>> flows = new LinkedHashMap<>(spread.flows());
        if (laid.ask() instanceof Ask.AtPump given) {
            only.ifPresent(
                    tip -> flows.put(tip.outlet().id(), LineSolver.delivered(tip.path(), errors, given.pressure())));
        }
        return flows;
    }

    /** What is taken for granted about the errors, as sentences. */
    List<String> assumed() {
        return only.map(tip -> errors.listAssumed(tip.path())).orElse(spread.assumed());
    }
}
