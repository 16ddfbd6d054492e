package org.hosewright.hydraulics.quantity;

import org.hosewright.hydraulics.error.InvalidInput;

/** Checks, rounding and writing of plain numbers: the one place for it, the same on every machine. */
public final class Numbers {
    /** What converting to SI and back may leave, as a share [1]. */
    private static final double CONVERSION = 1e-12;

    private static final long[] POWERS = {1, 10, 100, 1000, 10_000, 100_000, 1_000_000};

    private Numbers() {}

    public static double requireFinite(String what, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new InvalidInput(what, String.valueOf(value), "a finite number", "");
        }
        return value;
    }

    public static double requirePositive(String what, double value) {
        if (!(requireFinite(what, value) > 0)) {
            throw new InvalidInput(what, plain(value), "a number above 0", "");
        }
        return value;
    }

    public static double requireNotNegative(String what, double value) {
        if (requireFinite(what, value) < 0) {
            throw new InvalidInput(what, plain(value), "0 or more", "");
        }
        return value;
    }

    /** A value within the range that a rule is good for; the last digits of a unit conversion do not count.
     *
     * @param value in the unit named
     */
    public static double requireWithin(String what, double value, double low, double high, String unit) {
        if (!(isAtLeast(requireFinite(what, value), low) && isAtLeast(high, value))) {
            String range = plain(low) + " to " + plain(high) + (unit.isEmpty() ? "" : " " + unit);
            throw new InvalidInput(what, plain(value) + (unit.isEmpty() ? "" : " " + unit), range, "");
        }
        return value;
    }

    /** Whether a value reaches a bound, the last digits of a unit conversion apart. */
    public static boolean isAtLeast(double value, double bound) {
        return value >= bound - CONVERSION * Math.abs(bound);
    }

    /** The nearest multiple of a step, halves away from zero. */
    public static double toNearest(double value, double step) {
        double ratio = value / step;
        return Math.signum(ratio) * Math.floor(Math.abs(ratio) * (1 + 1e-15) + 0.5) * step;
    }

    /** A number with a fixed count of decimals, halves away from zero, a true zero without sign.
     *
     * @param decimals 0 to 6
     */
    public static String fixed(double value, int decimals) {
        if (decimals < 0 || decimals >= POWERS.length) {
            throw new InvalidInput("decimals", String.valueOf(decimals), "0 to 6", "");
        }
        double scaled = Math.abs(requireFinite("number", value)) * POWERS[decimals] * (1 + 1e-15) + 0.5;
        if (scaled >= 9e15) {
            return String.valueOf(value);
        }
        long units = (long) Math.floor(scaled);
        String sign = value < 0 && units != 0 ? "-" : "";
        String whole = String.valueOf(units / POWERS[decimals]);
        return decimals == 0 ? sign + whole : sign + whole + "." + padded(units % POWERS[decimals], decimals);
    }

    /** A number with as many decimals as it needs, at most six. */
    public static String plain(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return String.valueOf(value);
        }
        return trimmed(fixed(value, 6));
    }

    /** A number's text without zeros at the end of its decimals. */
    static String trimmed(String text) {
        int end = text.length();
        while (text.indexOf('.') >= 0 && text.charAt(end - 1) == '0') {
            end--;
        }
        return text.indexOf('.') < 0 ? text : text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    static String padded(long value, int width) {
        StringBuilder digits = new StringBuilder(String.valueOf(value));
        while (digits.length() < width) {
            digits.insert(0, '0');
        }
        return digits.toString();
    }
}
