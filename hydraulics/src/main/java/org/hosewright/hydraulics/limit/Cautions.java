package org.hosewright.hydraulics.limit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** What people should know about a line beside its limits, as sentences. */
public final class Cautions {
    /** The rise that a pressure control may allow when everything shuts.
     *
     * @source NFPA 1901/1911: not more than 30 psi (from memory)
     */
    public static final Pressure CONTROL_RISE = Pressure.ofPsi(30);

    private Cautions() {}

    /** The cautions at a state, in a company's units; the gravest kinds first. */
    public static List<String> list(Line line, LineState state, Bounds bounds, UnitSystem units) {
        Set<String> says = new LinkedHashSet<>();
        addReach(says, state, units);
        addControlRise(says, line, state, units);
        for (Run run : line.runs()) {
            addHose(says, run.hose(), bounds.testAge(run.hose().id()));
        }
        addTip(says, line, state, units);
        bounds.rated().flatMap(rated -> findRating(state.pump(), units)).ifPresent(says::add);
        return new ArrayList<>(says);
    }

    private static void addReach(Set<String> says, LineState state, UnitSystem units) {
        if (state.flow().cubicMetresPerSecond() == 0 && state.tip().pascals() < 0) {
            says.add("The water does not reach the tip: "
                    + text(new Pressure(-state.tip().pascals()), units) + " are missing.");
        }
    }

    private static void addControlRise(Set<String> says, Line line, LineState state, UnitSystem units) {
        Pressure risen = new Pressure(state.pump().pascals() + CONTROL_RISE.pascals());
        for (Limit limit : ShutLimits.listOf(line, ShutOff.of(line, risen))) {
            if (limit.broken()) {
                says.add("When the nozzle shuts, the pressure control may let the pressure rise by "
                        + text(CONTROL_RISE, units) + ": " + limit.what() + ", would see " + text(limit.at(), units)
                        + ", above " + text(limit.limit(), units) + " (" + limit.rule(units) + ").");
            }
        }
    }

    private static void addHose(Set<String> says, Hose hose, TestAge age) {
        if (hose.serviceTest().isEmpty()) {
            says.add("No service test of " + hose.id() + " is known: its pressure is not checked.");
        } else if (age == TestAge.OVERDUE) {
            says.add(
                    "The service test of " + hose.id() + " is older than 12 months: its limit is not to be relied on.");
        } else if (age == TestAge.UNDATED) {
            says.add("The day of the service test of " + hose.id() + " is not known: see that it is within 12 months.");
        }
        if (age == TestAge.TOO_OLD) {
            says.add(hose.id() + " was made before July 1987: it belongs out of service.");
        }
    }

    private static void addTip(Set<String> says, Line line, LineState state, UnitSystem units) {
        if (line.tip() instanceof Automatic automatic) {
            double q = state.flow().cubicMetresPerSecond();
            boolean held = q > automatic.from().cubicMetresPerSecond()
                    && q < automatic.to().cubicMetresPerSecond();
            if (held) {
                says.add(line.nozzle().id() + " holds " + text(automatic.holds(), units) + " from "
                        + text(automatic.from(), units) + " to " + text(automatic.to(), units)
                        + ": a good-looking stream may be short of water; here it is supplied "
                        + text(state.flow(), units) + ".");
            }
        }
    }

    /** What is to be said of a pump's rating at a net pressure, where it says nothing there. */
    public static Optional<String> findRating(Pressure net, UnitSystem units) {
        return net.pascals() > RatedCurve.lastRated().pascals()
                ? Optional.of("The pump's rating says nothing above " + text(RatedCurve.lastRated(), units)
                        + ": its capacity there is a guess.")
                : Optional.empty();
    }

    private static String text(Quantity quantity, UnitSystem units) {
        return QuantityShown.of(units).text(quantity);
    }
}
