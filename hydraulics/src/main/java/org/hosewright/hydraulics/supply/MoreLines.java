package org.hosewright.hydraulics.supply;

import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** How many more lines like the first a pumped hydrant gives, by the drop that the first one made. */
public final class MoreLines {
    /** A static pressure this little below a ten counts as on it [10 psi]. */
    private static final double DIGIT = 1e-9;

    private MoreLines() {}

    /** By the drop in per cent of the static pressure: to 10 three more, to 15 two, to 25 one, beyond none whole.
     *
     * @source trade cards, percentage method; more than 10 and up to 15 counts as two (the print leaves 10 to 11 open)
     */
    public static int byPercent(Pressure still, Pressure left) {
        double percent = 100 * drop_psi(still, left) / still.psi();
        return count(percent, 10, 15, 25);
    }

    /** By the first digits of the static pressure: a drop up to it three more, to twice it two, to three times one.
     *
     * @source trade cards, first digit method; the counts from memory
     * @validFor static pressures of 10 psi and more
     */
    public static int byFirstDigit(Pressure still, Pressure left) {
        double digit = Math.floor(Numbers.requireWithin("static pressure", still.psi(), 10, 200, "psi") / 10 + DIGIT);
        double drop = drop_psi(still, left);
        return count(drop, digit, 2 * digit, 3 * digit);
    }

    /** The drop that so many lines would make, squaring the lines.
     *
     * @source trade usage (from memory): n lines drop n^2 times as much
     */
    public static Pressure squared(Pressure dropOfOne, int lines) {
        Numbers.requireNotNegative("lines", lines);
        return new Pressure((double) lines * lines * dropOfOne.pascals());
    }

    private static int count(double drop, double three, double two, double one) {
        if (Numbers.isAtLeast(three, drop)) {
            return 3;
        }
        return Numbers.isAtLeast(two, drop) ? 2 : Numbers.isAtLeast(one, drop) ? 1 : 0;
    }

    private static double drop_psi(Pressure still, Pressure left) {
        Numbers.requirePositive("static pressure", still.pascals());
        return Numbers.requireNotNegative("drop of pressure", still.psi() - left.psi());
    }
}
