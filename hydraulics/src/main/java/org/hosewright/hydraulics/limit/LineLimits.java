package org.hosewright.hydraulics.limit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Pressure;

/** Every limit that a line stands against, nozzle open and nozzle shut. */
public final class LineLimits {
    private static final String SHUT = ", nozzle shut";

    private LineLimits() {}

    /** The limits at a state, the most used first.
     *
     * <p>Hose, appliances and nozzle are held to the highest pressure that each sees with the nozzle shut and the pump
     * untouched. What has no figure is no limit here; {@link Cautions} says so.
     */
    public static List<Limit> of(Line line, LineState state, Bounds bounds) {
        List<Limit> limits = new ArrayList<>();
        bounds.supply()
                .ifPresent(most -> limits.add(new Limit(
                        "the water supply", LimitKind.SUPPLY, state.flow(), most, "most flow that the supply gives")));
        bounds.ceiling()
                .ifPresent(ceiling -> limits.add(new Limit(
                        "the ceiling for the pump", LimitKind.CEILING, state.pump(), ceiling, "set by the company")));
        bounds.rated().map(RatedCurve::new).ifPresent(curve -> limits.add(pump(curve, state)));
        bounds.crew()
                .ifPresent(crew -> limits.add(new Limit(
                        "the reaction for a crew of " + crew.people(),
                        LimitKind.REACTION,
                        state.reaction(),
                        crew.figure(),
                        "the company's own crew figure")));
        limits.addAll(shut(line, ShutOff.of(line, state.pump())));
        limits.sort(Comparator.comparingDouble(Limit::used).reversed());
        return List.copyOf(limits);
    }

    /** The highest pump pressure at which a limit still holds, all else as it is; empty where none would do. */
    public static Optional<Pressure> findMostPump(Limit limit, LineState state, Bounds bounds) {
        boolean ofPressure = limit.at() instanceof Pressure;
        if (ofPressure) {
            return Optional.of(new Pressure(
                    state.pump().pascals() - limit.at().si() + limit.limit().si()));
        }
        return limit.kind() == LimitKind.PUMP
                ? bounds.rated().map(RatedCurve::new).map(curve -> curve.pressureFor(state.flow()))
                : Optional.empty();
    }

    private static Limit pump(RatedCurve curve, LineState state) {
        return new Limit(
                "the capacity of the pump at that pressure",
                LimitKind.PUMP,
                state.flow(),
                curve.capacity(state.pump()),
                "rated curve: 100 % to 150 psi, 70 % at 200, 50 % at 250");
    }

    /** The limits with the nozzle shut, in laying order, the nozzle last. */
    static List<Limit> shut(Line line, ShutOff still) {
        Map<String, Limit> limits = new LinkedHashMap<>();
        for (int i = 0; i < line.runs().size(); i++) {
            Run run = line.runs().get(i);
            Pressure inHose = still.runs().get(i);
            Pressure atEnd = still.ends().get(i);
            run.hose()
                    .limit()
                    .ifPresent(most -> keepWorse(
                            limits,
                            new Limit(
                                    run.hose().id() + SHUT, LimitKind.HOSE, inHose, most, "90 % of its service test")));
            run.end()
                    .flatMap(Appliance::rated)
                    .ifPresent(most -> keepWorse(
                            limits,
                            new Limit(
                                    run.end().get().id() + SHUT,
                                    LimitKind.APPLIANCE,
                                    atEnd,
                                    most,
                                    "its maker's rating")));
        }
        line.nozzle()
                .most()
                .ifPresent(most -> keepWorse(
                        limits,
                        new Limit(
                                line.nozzle().id() + SHUT,
                                LimitKind.NOZZLE,
                                still.atNozzle(),
                                most,
                                "the most its maker allows")));
        return List.copyOf(limits.values());
    }

    private static void keepWorse(Map<String, Limit> limits, Limit limit) {
        limits.merge(limit.kind() + limit.what(), limit, (a, b) -> a.used() >= b.used() ? a : b);
    }
}
