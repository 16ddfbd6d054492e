package org.hosewright.hydraulics.limit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Pressure;

/** Every limit that a line stands against, nozzle open and nozzle shut. */
public final class LineLimits {
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
        limits.addAll(ShutLimits.listOf(line, ShutOff.of(line, state.pump())));
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
        return curve.limit("the capacity of the pump at that pressure", state.flow(), state.pump());
    }
}
