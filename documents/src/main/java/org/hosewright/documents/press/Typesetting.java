package org.hosewright.documents.press;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Plain words as a typesetter would set them: real fractions, a true minus, numbers kept with their units. */
public final class Typesetting {
    private static final Map<String, String> FRACTIONS = Map.ofEntries(
            Map.entry("1/2", "½"),
            Map.entry("1/3", "⅓"),
            Map.entry("2/3", "⅔"),
            Map.entry("1/4", "¼"),
            Map.entry("3/4", "¾"),
            Map.entry("1/8", "⅛"),
            Map.entry("3/8", "⅜"),
            Map.entry("5/8", "⅝"),
            Map.entry("7/8", "⅞"));
    private static final Pattern FRACTION = Pattern.compile("(?<![\\d/.])(?:(\\d+) )?(\\d{1,2}/\\d{1,3})(?![\\d/.])");
    private static final Pattern MINUS = Pattern.compile("(?<![\\w.\\p{Nd})])-(?=[\\d.])");
    private static final Pattern TIMES =
            Pattern.compile("(?<=[\\d²)]) x (?=[\\d√(])|(?<=\\d) x (?=sqrt\\()|(?<=\\^2) x (?=[\\ds])");
    private static final Pattern QUANTITY =
            Pattern.compile("(?:± )?[−+]?\\d[\\d.]*(?:\\u202F?[¼½¾⅓⅔⅛⅜⅝⅞]|\\u202F?[⁰¹²³⁴-⁹]+⁄[₀-₉]+)?"
                    + "(?: (?:psi|kPa|bar|gpm|L/min|lbf|N|ft|in|mm|m|gal|L|s|min|%))+(?![\\w/])");
    private static final String ABOVE = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final String BELOW = "₀₁₂₃₄₅₆₇₈₉";

    private Typesetting() {}

    /** The words with real fractions, a true minus and formulas as one writes them by hand. */
    public static String set(String words) {
        Matcher fractions = FRACTION.matcher(words);
        String set =
                fractions.replaceAll(m -> (m.group(1) == null ? "" : m.group(1) + "\u202F") + fraction(m.group(2)));
        String formulas =
                TIMES.matcher(set).replaceAll(" × ").replace("^2", "²").replace("sqrt(", "√(");
        return MINUS.matcher(formulas).replaceAll("−");
    }

    /** The set words as markup, each number and its unit kept on one line. */
    static String markup(String words) {
        String escaped = escaped(set(words));
        return QUANTITY.matcher(escaped).replaceAll(m -> m.group().replace(' ', '\u00A0'));
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static String fraction(String plain) {
        String known = FRACTIONS.get(plain);
        if (known != null) {
            return known;
        }
        int bar = plain.indexOf('/');
        return raised(plain.substring(0, bar), ABOVE) + "⁄" + raised(plain.substring(bar + 1), BELOW);
    }

    private static String raised(String digits, String alphabet) {
        StringBuilder set = new StringBuilder();
        digits.chars().forEach(c -> set.append(alphabet.charAt(c - '0')));
        return set.toString();
    }
}
