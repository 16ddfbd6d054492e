package org.hosewright.hydraulics.profile;

import java.util.List;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** Round numbers at the left and below, the last of each with its unit. */
final class Axes {
    /** From one round pressure to the next at least [em]. */
    private static final double APART_em = 2.2;

    /** Between the numbers of the length axis at least [em]. */
    private static final double BETWEEN_em = 1.2;

    /** Between a pressure's number and the plot, a dot's room [em]. */
    private static final double BESIDE_em = 0.6;

    private final UnitSystem units;
    private final double em;

    Axes(UnitSystem units, double em) {
        this.units = units;
        this.em = em;
    }

    /** Room that the pressures' numbers need at most, before the plot is known. */
    double width(Span span) {
        Unit unit = units.pressure();
        double most = Math.max(unit.ofSi(2 * span.high(0).pascals()), 1);
        String widest = Numbers.fixed(most, 0) + " " + unit.symbol();
        return Lettering.width(Role.AXIS, span.low_Pa() < 0 ? "\u2212" + widest : widest, em);
    }

    void pressures(Pen pen, Plot plot) {
        Unit unit = units.pressure();
        double low = unit.ofSi(plot.low().pascals());
        double high = unit.ofSi(plot.high().pascals());
        Ticks ticks = Ticks.of(low, high, (plot.bottom() - plot.top()) / (APART_em * em));
        double last = ticks.values().get(ticks.values().size() - 1);
        for (double value : ticks.values()) {
            double y = plot.y(Pressure.of(value, unit));
            pen.stroke(Role.GRID, plot.left(), y, plot.right(), y);
            String text = number(value) + (value == last ? " " + unit.symbol() : "");
            pen.set(pen.small(Role.AXIS, plot.left() - BESIDE_em * em, y + 0.35 * em, Anchor.END, text));
        }
    }

    /** The numbers below, each centred on its place, or held to the edge of the sheet.
     *
     * @param y baseline
     */
    void lengths(Pen pen, Plot plot, double y, Sheet sheet) {
        Unit unit = units.length();
        double whole = unit.ofSi(plot.length().metres());
        double widest = Lettering.width(Role.AXIS, Numbers.fixed(whole, 0) + " " + unit.symbol(), em);
        List<Double> values = Ticks.of(0, whole, (plot.right() - plot.left()) / (widest + BETWEEN_em * em))
                .values();
        for (int i = 0; i < values.size(); i++) {
            double x = plot.x(Length.of(values.get(i), unit));
            String text = number(values.get(i)) + (i == values.size() - 1 ? " " + unit.symbol() : "");
            double half = Lettering.width(Role.AXIS, text, em) / 2;
            boolean over = x + half > sheet.width();
            pen.set(pen.small(Role.AXIS, over ? sheet.width() : x, y, over ? Anchor.END : Anchor.MIDDLE, text));
        }
    }

    private static String number(double value) {
        String text = Numbers.plain(value);
        return text.startsWith("-") ? "\u2212" + text.substring(1) : text;
    }
}
