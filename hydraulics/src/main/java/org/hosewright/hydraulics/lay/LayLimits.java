package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LimitKind;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.limit.RatedCurve;
import org.hosewright.hydraulics.line.LineState;

/** Every limit that a lay stands against, nozzles open and nozzles shut. */
public final class LayLimits {
    private static final Set<LimitKind> OF_PUMP = Set.of(LimitKind.SUPPLY, LimitKind.CEILING);

    private LayLimits() {}

    /** The limits at a state, the most used first.
     *
     * <p>Hose, appliances and nozzles are held to the highest pressure that each sees with every nozzle shut and the
     * pump untouched: a gate holds nothing back then. Each kind of thing stands once, where it is used most.
     *
     * @param bounds what the engine and the supply set; crews stand at the nozzles
     */
    public static List<Limit> of(LayState lay, Bounds bounds) {
        Map<String, Limit> worst = new LinkedHashMap<>();
        Bounds all = lay.intake()
                .map(Intake::most)
                .filter(most -> bounds.supply().isEmpty() && most.cubicMetresPerSecond() > 0)
                .map(most -> bounds.withSupply(Optional.of(most)))
                .orElse(bounds);
        for (Limit limit : ofPump(lay, all)) {
            keepWorse(worst, limit);
        }
        PieceLimits.of(lay).forEach(limit -> keepWorse(worst, limit));
        for (AtTip tip : lay.tips()) {
            Bounds own = Bounds.NONE.withCrew(
                    tip.outlet().shut() ? Optional.empty() : tip.outlet().crew());
            for (Limit limit : LineLimits.of(tip.path(), tip.state().withPump(lay.shutPump()), own)) {
                boolean held = limit.kind() == LimitKind.REACTION;
                if (!held && limit.kind() != LimitKind.NOZZLE) {
                    continue;
                }
                String what = held ? "the reaction at " + tip.outlet().id() + " for a crew of " + people(tip) : "";
                keepWorse(worst, held ? renamed(limit, what) : limit);
            }
        }
        List<Limit> limits = new ArrayList<>(worst.values());
        limits.sort(Comparator.comparingDouble(Limit::used).reversed());
        return List.copyOf(limits);
    }

    /** What the pump and its supply are held to, at the sum of the flows; the capacity by what the pump itself adds. */
    private static List<Limit> ofPump(LayState lay, Bounds bounds) {
        AtTip first = lay.tips().get(0);
        LineState one = first.state();
        LineState sum = new LineState(
                lay.pump(),
                lay.flow(),
                one.tip(),
                one.reaction(),
                one.hoseLoss(),
                one.pipingLoss(),
                one.applianceLoss(),
                one.rise());
        List<Limit> limits = new ArrayList<>();
        for (Limit limit : LineLimits.of(first.path(), sum, bounds.withCrew(Optional.empty()))) {
            if (OF_PUMP.contains(limit.kind())) {
                limits.add(limit);
            }
        }
        bounds.rated()
                .map(RatedCurve::new)
                .ifPresent(curve ->
                        limits.add(curve.limit("the capacity of the pump at that pressure", lay.flow(), lay.net())));
        return limits;
    }

    private static int people(AtTip tip) {
        return tip.outlet().crew().orElseThrow().people();
    }

    private static Limit renamed(Limit limit, String what) {
        return new Limit(what, limit.kind(), limit.at(), limit.limit(), limit.rule());
    }

    private static void keepWorse(Map<String, Limit> worst, Limit limit) {
        worst.merge(limit.kind() + " " + limit.what(), limit, (a, b) -> a.used() >= b.used() ? a : b);
    }
}
