package org.hosewright.ledger.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.order.Check;
import org.hosewright.hydraulics.order.OrderedCheck;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** Finds the round figure that a gauge must show for a line, and checks the pump pressure behind it.
 *
 * @param gauge the gauge the figure is read on
 * @param errors how the losses' errors hang together
 * @param bounds what the company has set
 * @param rounding what figures are rounded to
 */
record CardFigures(PanelGauge gauge, LossErrors errors, Bounds bounds, Rounding rounding) {
    /** How many steps either way another figure is looked for. */
    private static final int SEARCH_STEPS = 40;

    /** A figure with its checks.
     *
     * @param figure what the gauge must show
     * @param check the pump pressure behind it, checked from both sides
     * @param nearest the figure nearest to what is needed that passes; empty where none would do
     * @param refusal why it must not be used and what would do; empty where it passes
     */
    record Figure(Pressure figure, OrderedCheck check, Optional<Pressure> nearest, List<String> refusal) {}

    /** The figure for what the line is there to do. */
    Figure figure(Line line) {
        Duty duty = Duty.of(line, bounds.target());
        Pressure wish = gauge.reads(LineSolver.solve(line, duty.ask()));
        Pressure figure = rounding.round(wish);
        OrderedCheck check = check(line, figure);
        List<String> old = old(line);
        if (!old.isEmpty()) {
            return new Figure(figure, check, Optional.empty(), old);
        }
        if (check.passed()) {
            return new Figure(figure, check, Optional.of(figure), List.of());
        }
        Optional<Pressure> nearest = nearest(line, figure, wish);
        return new Figure(figure, check, nearest, refusal(nearest, check));
    }

    /** Hose that belongs out of service, as refusals: no pressure is right for it. */
    private List<String> old(Line line) {
        return line.runs().stream()
                .map(run -> run.hose().id())
                .filter(hose -> bounds.testAge(hose) == TestAge.TOO_OLD)
                .distinct()
                .map(hose -> hose + " was made before July 1987: it belongs out of service.")
                .toList();
    }

    private OrderedCheck check(Line line, Pressure figure) {
        return OrderedCheck.asOrdered(line, errors, bounds, gauge.pump(line, figure), rounding);
    }

    private List<String> refusal(Optional<Pressure> nearest, OrderedCheck check) {
        List<String> says = new ArrayList<>();
        check.checks().stream().filter(one -> !one.passed()).map(Check::says).forEach(says::add);
        QuantityShown shown = QuantityShown.of(rounding.units());
        says.add(nearest.map(pressure -> shown.text(pressure) + " would do.")
                .orElse("No multiple of " + shown.text(rounding.step()) + " would do."));
        return says;
    }

    private Optional<Pressure> nearest(Line line, Pressure figure, Pressure wish) {
        Optional<Pressure> best = Optional.empty();
        for (int steps = -SEARCH_STEPS; steps <= SEARCH_STEPS; steps++) {
            Pressure other =
                    new Pressure(figure.pascals() + steps * rounding.step().pascals());
            boolean nearer = best.isEmpty() || off(other, wish) < off(best.get(), wish);
            if (nearer
                    && gauge.pump(line, other).pascals() > 0
                    && check(line, other).passed()) {
                best = Optional.of(other);
            }
        }
        return best;
    }

    private static double off(Pressure one, Pressure other) {
        return Math.abs(one.pascals() - other.pascals());
    }
}
