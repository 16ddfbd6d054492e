package org.hosewright.hydraulics.quantity;

import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;

/** The shortest decimal number that reads back as exactly the same SI value.
 *
 * <p>Fifteen digits do for what people write. A computed value may fall between them, since a unit's size stretches the
 * steps of a double; a few more digits then reach it. Temperatures, which have a zero of their own, come back to a
 * last bit.
 */
final class ExactText {
    /** Less than this of a unit is written as 0; more than its inverse is refused. */
    static final double TINY = 1e-15;

    private static final int MORE_DIGITS = 5;

    private ExactText() {}

    /** Writes a number.
     *
     * @param si the value in SI
     * @param scale what the text counts
     * @return a decimal number without unit
     */
    static String of(double si, Scale scale) {
        double x = scale.ofSi(Numbers.requireFinite("quantity", si));
        if (Math.abs(x) < TINY || reads("0", scale) == si) {
            return "0";
        }
        if (Math.abs(x) > 1 / TINY) {
            throw new InvalidInput("quantity", String.valueOf(x), "a number below 1e15", "");
        }
        String best = "";
        for (int digits = 1; digits <= Decimal.EXACT_DIGITS; digits++) {
            best = Numbers.trimmed(rounded(x, digits));
            if (reads(best, scale) == si) {
                return best;
            }
        }
        return longer(x, si, scale).orElse(best);
    }

    /** A number with so many significant digits. */
    static String rounded(double x, int digits) {
        int decimals = digits - 1 - exponent(Math.abs(x));
        return spelled(x < 0, whole(Math.abs(x), decimals), decimals);
    }

    /** The power of ten at or below a number above 0. */
    static int exponent(double x) {
        int power = 0;
        while (Decimal.shift(1, power + 1) <= x) {
            power++;
        }
        while (Decimal.shift(1, power) > x) {
            power--;
        }
        return power;
    }

    private static Optional<String> longer(double x, double si, Scale scale) {
        int decimals = Decimal.EXACT_DIGITS - 1 - exponent(Math.abs(x));
        long nearest = whole(Math.abs(x), decimals);
        for (long head = nearest; head >= nearest - 1 && decimals >= 0; head--) {
            String start = spelled(x < 0, head, decimals);
            Decimal exact = Decimal.exactly(head, decimals);
            double left = Math.signum(x) * scale.missing(x < 0 ? exact.negated() : exact, si);
            for (int more = 1; more <= MORE_DIGITS; more++) {
                long tail = whole(left, decimals + more);
                boolean fits = left >= 0 && tail < whole(1, more);
                String text = start + (decimals == 0 ? "." : "") + Numbers.padded(tail, more);
                if (fits && reads(text, scale) == si) {
                    return Optional.of(text);
                }
            }
        }
        return Optional.empty();
    }

    private static double reads(String text, Scale scale) {
        return scale.toSi(decimal(text));
    }

    private static Decimal decimal(String text) {
        boolean negative = text.charAt(0) == '-';
        String number = negative ? text.substring(1) : text;
        int point = number.indexOf('.');
        String digits = point < 0 ? number : number.substring(0, point) + number.substring(point + 1);
        Decimal decimal = Decimal.of(digits, point < 0 ? 0 : number.length() - point - 1);
        return negative ? decimal.negated() : decimal;
    }

    private static long whole(double x, int decimals) {
        double scaled = decimals < 0 ? x / Decimal.shift(1, -decimals) : x * Decimal.shift(1, decimals);
        return (long) Math.floor(scaled + 0.5);
    }

    private static String spelled(boolean negative, long whole, int decimals) {
        String digits = Numbers.padded(whole, Math.max(1, decimals + 1));
        int point = digits.length() - Math.max(0, decimals);
        String text = decimals > 0 ? digits.substring(0, point) + "." + digits.substring(point) : digits;
        return (negative ? "-" : "") + (decimals < 0 ? text + "0".repeat(-decimals) : text);
    }
}
