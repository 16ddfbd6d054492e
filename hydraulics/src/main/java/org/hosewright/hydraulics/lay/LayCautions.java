package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Cautions;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** What people should know about a lay beside its limits, as sentences. */
public final class LayCautions {
    /** How much more than asked counts as more [1]. */
    private static final double MORE = 1e-6;

    private LayCautions() {}

    /** Hose that has let go: the word to the crew stands before all else. */
    public static List<String> listBursts(LayState lay, UnitSystem units) {
        return new PieceCautions(lay, QuantityShown.of(units)).ofBursts();
    }

    /** Water that does not come: tips that it does not reach, intakes that would fall too low. */
    public static List<String> listMissing(LayState lay, UnitSystem units) {
        Set<String> says = new LinkedHashSet<>();
        QuantityShown shown = QuantityShown.of(units);
        PieceCautions pieces = new PieceCautions(lay, shown);
        for (AtTip tip : lay.open()) {
            findDry(tip, shown).ifPresent(says::add);
        }
        says.addAll(pieces.ofIntakes());
        return new ArrayList<>(says);
    }

    /** The cautions at a state, in a company's units, bursts first, then what is missing. */
    public static List<String> list(LayState lay, Ask ask, Bounds bounds, UnitSystem units) {
        Set<String> says = new LinkedHashSet<>(listBursts(lay, units));
        says.addAll(listMissing(lay, units));
        QuantityShown shown = QuantityShown.of(units);
        PieceCautions pieces = new PieceCautions(lay, shown);
        for (AtTip tip : lay.open()) {
            findMore(tip, ask, shown).ifPresent(says::add);
            pieces.findLess(tip, ask).ifPresent(says::add);
        }
        says.addAll(pieces.list());
        Bounds unrated = bounds.withPump(bounds.ceiling(), Optional.empty());
        for (AtTip tip : lay.tips()) {
            says.addAll(Cautions.list(tip.path(), wet(tip.state()), unrated, units));
        }
        bounds.rated().flatMap(rated -> Cautions.findRating(lay.net(), units)).ifPresent(says::add);
        return new ArrayList<>(says);
    }

    private static Optional<String> findDry(AtTip tip, QuantityShown shown) {
        double short_Pa = -tip.state().tip().pascals();
        return tip.state().flow().cubicMetresPerSecond() == 0 && short_Pa >= 0
                ? Optional.of("The water does not reach " + tip.outlet().id() + ": "
                        + shown.text(new Pressure(short_Pa)) + " are missing.")
                : Optional.empty();
    }

    /** A tip that gets more than asked: its discharge cannot be gated without starving another leg. */
    private static Optional<String> findMore(AtTip tip, Ask ask, QuantityShown shown) {
        if (ask instanceof Ask.AtPump) {
            return Optional.empty();
        }
        double asked = Asked.flow_m3s(tip.outlet(), ask);
        LineState state = tip.state();
        return state.flow().cubicMetresPerSecond() > asked * (1 + MORE)
                ? Optional.of(tip.outlet().id() + " gets more than asked, " + shown.text(state.flow()) + " at "
                        + shown.text(state.tip()) + ": a gate at the discharge cannot even out the legs of a wye;"
                        + " gate that leg down where it branches off, or leave it.")
                : Optional.empty();
    }

    private static LineState wet(LineState state) {
        return state.tip().pascals() >= 0
                ? state
                : new LineState(
                        state.pump(),
                        state.flow(),
                        new Pressure(0),
                        state.reaction(),
                        state.hoseLoss(),
                        state.pipingLoss(),
                        state.applianceLoss(),
                        state.rise());
    }
}
