package org.hosewright.hydraulics.working;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** How numbers are written in a hand calculation: with the digits that make it come out on a pocket calculator.
 *
 * @param units the company's units
 */
record Paper(UnitSystem units) {
    private static final int DIGITS = 5;

    boolean us() {
        return units == UnitSystem.US;
    }

    /** Decimals that pressures are worked out to: tenths of a psi, whole kPa. */
    int pressureDecimals() {
        return us() ? 1 : 0;
    }

    String pressure(Pressure pressure) {
        return Numbers.fixed(units.show(pressure), pressureDecimals());
    }

    String pressureUnit() {
        return " " + units.pressure().symbol();
    }

    /** A pressure that is given, not worked out: with the digits it has. */
    String given(Quantity quantity) {
        return significant(units.show(quantity), DIGITS);
    }

    String flow(Flow flow) {
        return Numbers.plain(Numbers.toNearest(units.show(flow), 0.01));
    }

    String flowUnit() {
        return " " + units.flow().symbol();
    }

    /** A flow in hundreds of the flow unit, as losses are worked with; the digits of {@link #flow}. */
    String hundreds(Flow flow) {
        return Numbers.plain(Numbers.toNearest(units.show(flow), 0.01) / 100);
    }

    String force(Force force) {
        return Numbers.fixed(units.show(force), us() ? 1 : 0) + " "
                + units.force().symbol();
    }

    /** A height in the length unit. */
    String height(Length height) {
        return significant(Math.abs(units.show(height)), DIGITS);
    }

    String length(Length length) {
        return Numbers.plain(Numbers.toNearest(units.show(length), 0.01)) + " "
                + units.length().symbol();
    }

    /** A length in hundreds of the length unit. */
    String hundreds(Length length) {
        return significant(units.show(length) / 100, DIGITS);
    }

    String loss(HoseLoss loss) {
        return significant(units.show(loss), DIGITS);
    }

    String loss(PointLoss loss) {
        return significant(units.show(loss), DIGITS);
    }

    /** A bore in the unit that bores are given in: inches, millimetres. */
    String bore(Length bore) {
        return significant(us() ? bore.inches() : bore.millimetres(), DIGITS);
    }

    /** A number with so many digits that count, zeros at the end left out. */
    static String significant(double value, int digits) {
        double size = Math.abs(value);
        int decimals = digits - 1;
        while (size >= 10 && decimals > 0) {
            size /= 10;
            decimals--;
        }
        while (size > 0 && size < 1 && decimals < 6) {
            size *= 10;
            decimals++;
        }
        String text = Numbers.fixed(value, Math.min(6, decimals));
        return text.indexOf('.') < 0 ? text : trimmed(text);
    }

    private static String trimmed(String text) {
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }
}
