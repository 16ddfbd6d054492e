package org.hosewright.hydraulics.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Cautions;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** The checks of one line at any pump pressure.
 *
 * @param line the line
 * @param errors how its losses' errors hang together
 * @param bounds what the company has set
 * @param rounding how pressures are ordered
 */
record Checking(Line line, LossErrors errors, Bounds bounds, Rounding rounding) {
    /** Beyond this no line is ordered; it ends the search for a pressure that would do. */
    private static final Pressure MOST = Pressure.ofPsi(600);

    /** How far beyond a bound still counts as on it [1]: the last digits of a unit conversion. */
    private static final double ON_IT = 1e-9;

    OrderedCheck check(Pressure ordered, Pressure wish) {
        Numbers.requirePositive("ordered pump pressure", ordered.pascals());
        return new OrderedCheck(
                ordered,
                rounding,
                LineSolver.atPump(line, ordered),
                edge(ordered, -1),
                edge(ordered, 1),
                listChecks(ordered),
                listNotChecked(),
                Cautions.list(line, edge(ordered, 1), bounds, rounding.units()),
                findNearest(wish));
    }

    /** The line at one end of the 95 % band of its flow. */
    private LineState edge(Pressure pump, int side) {
        return LineSolver.atPump(errors.shifted(line, pump, side * QuantityShown.HALF_WIDTH), pump);
    }

    private List<Check> listChecks(Pressure pump) {
        LineState least = edge(pump, -1);
        LineState most = edge(pump, 1);
        List<Check> checks = new ArrayList<>();
        bounds.least().ifPresent(flow -> checks.add(atLeast("flow", least.flow(), flow)));
        bounds.tipLeast().ifPresent(tip -> checks.add(atLeast("tip pressure", least.tip(), tip)));
        bounds.tipMost().ifPresent(tip -> checks.add(atMost("tip pressure", most.tip(), tip)));
        for (Limit limit : LineLimits.of(line, most, bounds)) {
            checks.add(within(limit));
        }
        return checks;
    }

    private Check atLeast(String what, Quantity at, Quantity least) {
        boolean passed = at.si() >= least.si() * (1 - ON_IT);
        String says = "The " + what + (passed ? " is at least " : " may be only ") + text(at, least)
                + " where the losses are high" + (passed ? "; " : ", below ") + text(least)
                + (passed ? " is" : ",") + " the least that is good enough.";
        return new Check("least " + what, passed, says);
    }

    private Check atMost(String what, Quantity at, Quantity most) {
        boolean passed = at.si() <= most.si() * (1 + ON_IT);
        String says = "The " + what + (passed ? " is at most " : " may be ") + text(at, most)
                + " where the losses are low" + (passed ? ", within " : ", above ") + text(most) + ".";
        return new Check("most " + what, passed, says);
    }

    private Check within(Limit limit) {
        String what = limit.what().startsWith("the ") ? "The " + limit.what().substring(4) : limit.what();
        String says = what + ": " + text(limit.at(), limit.limit()) + (limit.broken() ? ", above " : ", within ")
                + text(limit.limit()) + " (" + limit.rule() + ").";
        return new Check(limit.what(), !limit.broken(), says);
    }

    private List<String> listNotChecked() {
        List<String> says = new ArrayList<>();
        if (bounds.least().isEmpty()) {
            says.add("No least flow is stated for this line: flow is not checked.");
        }
        if (bounds.crew().isEmpty()) {
            says.add("No crew figure is stated for this line: reaction is not checked.");
        }
        if (bounds.ceiling().isEmpty()) {
            says.add("No ceiling is set for the pump: pump pressure is not checked against one.");
        }
        return says;
    }

    /** The multiple of the step nearest to a wish that passes; the lower one of two as near. */
    private Optional<Pressure> findNearest(Pressure wish) {
        double step_Pa = rounding.step().pascals();
        int most = (int) Math.floor(Math.max(MOST.pascals(), wish.pascals()) / step_Pa);
        Optional<Pressure> best = Optional.empty();
        double bestOff_Pa = Double.POSITIVE_INFINITY;
        for (int count = 1; count <= most; count++) {
            Pressure candidate = rounding.times(count);
            double off_Pa = Math.abs(candidate.pascals() - wish.pascals());
            if (off_Pa < bestOff_Pa && listChecks(candidate).stream().allMatch(Check::passed)) {
                best = Optional.of(candidate);
                bestOff_Pa = off_Pa;
            }
        }
        return best;
    }

    /** A quantity beside a bound: with a decimal more where both would read the same. */
    private String text(Quantity at, Quantity bound) {
        String plain = text(at);
        boolean same = plain.equals(text(bound)) && Math.abs(at.si() - bound.si()) > ON_IT * bound.si();
        String finer = Numbers.fixed(rounding.units().show(at), 1) + " "
                + rounding.units().unitOf(at);
        return same ? finer : plain;
    }

    private String text(Quantity quantity) {
        return QuantityShown.of(rounding.units()).text(quantity);
    }
}
