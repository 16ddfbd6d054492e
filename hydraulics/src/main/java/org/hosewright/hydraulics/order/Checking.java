package org.hosewright.hydraulics.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Cautions;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The checks of one line at any figure.
 *
 * @param line the line
 * @param ordering how its pressures are ordered
 */
record Checking(Line line, Ordering ordering) {
    /** Beyond this no line is ordered; it ends the search for a pressure that would do. */
    private static final Pressure MOST = Pressure.ofPsi(600);

    /** How far beyond a bound still counts as on it [1]: the last digits of a unit conversion. */
    private static final double ON_IT = 1e-9;

    OrderedCheck check(Pressure figure, Pressure wish) {
        Pressure ordered = ordering.gauge().pump(line, figure);
        Numbers.requirePositive("ordered pump pressure", ordered.pascals());
        LineState most = edge(ordered, 1);
        return new OrderedCheck(
                figure,
                ordered,
                ordering.rounding(),
                LineSolver.atPump(line, ordered),
                edge(ordered, -1),
                most,
                listChecks(ordered),
                listNotChecked(),
                Cautions.list(line, most, ordering.bounds(), units()),
                findNearest(wish));
    }

    /** The line at one end of the 95 % band of its flow. */
    private LineState edge(Pressure pump, int side) {
        return LineSolver.atPump(ordering.errors().shifted(line, pump, side * QuantityShown.HALF_WIDTH), pump);
    }

    private List<Check> listChecks(Pressure pump) {
        LineState least = edge(pump, -1);
        LineState most = edge(pump, 1);
        List<Check> checks = new ArrayList<>();
        Bounds bounds = ordering.bounds();
        bounds.least().ifPresent(flow -> checks.add(atLeast("flow", least.flow(), flow)));
        bounds.tipLeast().ifPresent(tip -> checks.add(atLeast("tip pressure", least.tip(), tip)));
        bounds.tipMost().ifPresent(tip -> checks.add(atMost("tip pressure", most.tip(), tip)));
        for (Limit limit : LineLimits.of(line, most, bounds)) {
            checks.add(within(limit));
        }
        checks.addAll(listOutOfService());
        return checks;
    }

    /** Hose that belongs out of service: no pressure is right for it. */
    private List<Check> listOutOfService() {
        return line.runs().stream()
                .map(run -> run.hose().id())
                .filter(hose -> ordering.bounds().testAge(hose) == TestAge.TOO_OLD)
                .distinct()
                .map(hose -> new Check(
                        "age of " + hose, false, hose + " was made before July 1987: it belongs out of service."))
                .toList();
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
                + text(limit.limit()) + " (" + limit.rule(units()) + ").";
        return new Check(limit.what(), !limit.broken(), says);
    }

    private List<String> listNotChecked() {
        List<String> says = new ArrayList<>();
        Bounds bounds = ordering.bounds();
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
        double step_Pa = ordering.rounding().step().pascals();
        int most = (int) Math.floor(Math.max(MOST.pascals(), wish.pascals()) / step_Pa);
        return IntStream.rangeClosed(1, most)
                .mapToObj(ordering.rounding()::times)
                .sorted(Comparator.comparingDouble(figure -> Math.abs(figure.pascals() - wish.pascals())))
                .filter(this::passes)
                .findFirst();
    }

    private boolean passes(Pressure figure) {
        Pressure pump = ordering.gauge().pump(line, figure);
        return pump.pascals() > 0 && listChecks(pump).stream().allMatch(Check::passed);
    }

    /** A quantity beside a bound: with a decimal more where both would read the same. */
    private String text(Quantity at, Quantity bound) {
        String plain = text(at);
        boolean same = plain.equals(text(bound)) && Math.abs(at.si() - bound.si()) > ON_IT * bound.si();
        String finer = Numbers.fixed(units().show(at), 1) + " " + units().unitOf(at);
        return same ? finer : plain;
    }

    private String text(Quantity quantity) {
        return QuantityShown.of(units()).text(quantity);
    }

    private UnitSystem units() {
        return ordering.rounding().units();
    }
}
