package org.hosewright.files.yaml;

import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Values written as YAML of one line, good within braces and outside them. */
public final class YamlText {
    /** Characters that no plain scalar of ours trips over; no colon, no comma, no bracket, no quote, no hash. */
    private static final Pattern PLAIN = Pattern.compile("[\\p{L}0-9.+][\\p{L}\\p{M}0-9 ./%@±+()'°–-]*");

    /** Plain words and numbers that the core schema reads as something else than text. */
    private static final Pattern OTHER =
            Pattern.compile("~|null|Null|NULL|true|True|TRUE|false|False|FALSE|[-+]?[0-9]+|0o[0-7]+|0x[0-9a-fA-F]+"
                    + "|[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?|[-+]?\\.(inf|Inf|INF)|\\.(nan|NaN|NAN)");

    private YamlText() {}

    /** A value: text, whole number, decimal number, or a map of such. */
    public static String of(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.isEmpty()
                    ? "{}"
                    : map.entrySet().stream()
                            .map(entry -> key(String.valueOf(entry.getKey())) + ": " + of(entry.getValue()))
                            .collect(Collectors.joining(", ", "{ ", " }"));
        }
        return value instanceof Number ? value.toString() : scalar(String.valueOf(value));
    }

    /** A key; a whole number stands bare, as people write it. */
    public static String key(String key) {
        return key.matches("[0-9]{1,9}") ? key : scalar(key);
    }

    /** A text, plain where it is safe, else in double quotes. */
    public static String scalar(String text) {
        boolean plain = PLAIN.matcher(text).matches() && !OTHER.matcher(text).matches() && !text.endsWith(" ");
        return plain ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> append(out, c);
            }
        });
        return out.append('"').toString();
    }

    private static void append(StringBuilder out, int c) {
        boolean hidden = c < ' ' || (c >= 0x7F && c < 0xA0) || c == 0x2028 || c == 0x2029 || c == 0xFEFF;
        if (hidden) {
            String hex = Integer.toHexString(c);
            out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
        } else {
            out.appendCodePoint(c);
        }
    }
}
