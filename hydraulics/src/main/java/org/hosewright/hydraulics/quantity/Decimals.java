package org.hosewright.hydraulics.quantity;

/** How many decimals a number deserves. */
final class Decimals {
    private static final int MOST = 4;
    private static final double TEN_SHOWN = 9.95;

    /** A half-width may be shown this much smaller than it is, in units of its last digit. */
    private static final double UNDERSTATED = 0.05;

    private Decimals() {}

    /** One below ten, none from there on: what a gauge or a meter can show. */
    static int plain(double value) {
        return Math.abs(value) < TEN_SHOWN ? 1 : 0;
    }

    /** As many as show so many significant digits. */
    static int significant(double value, int digits) {
        double size = Math.abs(value);
        return size > 0 ? Math.max(0, Math.min(MOST, digits - 1 - ExactText.exponent(size))) : 0;
    }

    /** As many as a half-width allows: its first digit at least, its second at most, no more than natural between. */
    static int known(int natural, double half) {
        return Math.max(significant(half, 1), Math.min(natural, significant(half, 2)));
    }

    /** A half-width rounded to decimals, upward unless it is within a twentieth of the digit below. */
    static String half(double half, int decimals) {
        double unit = Decimal.shift(1, -decimals);
        return Numbers.fixed(Math.ceil(half / unit - UNDERSTATED) * unit, decimals);
    }
}
