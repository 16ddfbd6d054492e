package org.hosewright.ledger.canonical;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.hosewright.hydraulics.quantity.Numbers;

/** JSON with one spelling for each value, fit to be hashed and signed: RFC 8785.
 *
 * @source RFC 8785, JSON Canonicalization Scheme, 2020: keys by UTF-16 code units, numbers as ECMAScript writes them
 */
public final class CanonicalJson {
    private static final int MOST_DIGITS = 17;
    private static final int LARGEST_PLAIN = 21;
    private static final int SMALLEST_PLAIN = -6;

    private CanonicalJson() {}

    /** The bytes to hash, UTF-8.
     *
     * @param value a map by text, a collection, a text, a number or a truth value
     */
    public static byte[] bytes(Object value) {
        return text(value).getBytes(StandardCharsets.UTF_8);
    }

    /** The same as text. */
    public static String text(Object value) {
        StringBuilder out = new StringBuilder();
        write(value, out);
        return out.toString();
    }

    private static void write(Object value, StringBuilder out) {
        if (value instanceof Map<?, ?> map) {
            writeMap(map, out);
        } else if (value instanceof Collection<?> items) {
            String comma = "[";
            for (Object item : items) {
                out.append(comma);
                write(item, out);
                comma = ",";
            }
            out.append(items.isEmpty() ? "[]" : "]");
        } else if (value instanceof Number number) {
            out.append(number(number.doubleValue()));
        } else if (value instanceof Boolean) {
            out.append(value);
        } else {
            writeText(String.valueOf(value), out);
        }
    }

    private static void writeMap(Map<?, ?> map, StringBuilder out) {
        Map<String, Object> sorted = new TreeMap<>();
        map.forEach((key, value) -> sorted.put(String.valueOf(key), java.util.Objects.requireNonNull(value)));
        String comma = "{";
        for (var entry : sorted.entrySet()) {
            out.append(comma);
            writeText(entry.getKey(), out);
            out.append(':');
            write(entry.getValue(), out);
            comma = ",";
        }
        out.append(sorted.isEmpty() ? "{}" : "}");
    }

    private static void writeText(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\b' -> out.append("\\b");
                case '\f' -> out.append("\\f");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> out.append(c < ' ' ? (c < 16 ? "\\u000" : "\\u00") + Integer.toHexString(c) : c);
            }
        }
        out.append('"');
    }

    /** A number as ECMAScript writes it: the fewest digits that read back the same. */
    static String number(double value) {
        Numbers.requireFinite("number in JSON", value);
        if (value == 0) {
            return "0";
        }
        BigDecimal shortest = shortest(Math.abs(value));
        String digits = shortest.unscaledValue().toString();
        int point = digits.length() - shortest.scale();
        return (value < 0 ? "-" : "") + placed(digits, point);
    }

    private static BigDecimal shortest(double value) {
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == value) {
                return rounded.stripTrailingZeros();
            }
        }
        return exact.round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN)).stripTrailingZeros();
    }

    private static String placed(String digits, int point) {
        int count = digits.length();
        if (count <= point && point <= LARGEST_PLAIN) {
            return digits + "0".repeat(point - count);
        }
        if (0 < point && point <= LARGEST_PLAIN) {
            return digits.substring(0, point) + "." + digits.substring(point);
        }
        if (SMALLEST_PLAIN < point && point <= 0) {
            return "0." + "0".repeat(-point) + digits;
        }
        int power = point - 1;
        String rest = count == 1 ? "" : "." + digits.substring(1);
        return digits.charAt(0) + rest + "e" + (power < 0 ? "-" : "+") + Math.abs(power);
    }
}
