package org.hosewright.files.term;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.ledger.kit.Coupling;

/** Couplings as people write them: a nominal size with its unit, then what kind it is; {@code 1 1/2 in NH}. */
public final class CouplingText {
    private static final String FORM = "a size and a kind, as in '1 1/2 in NH' or '45 mm instantaneous'";
    private static final Pattern PARTS = Pattern.compile("([0-9][0-9 ./]* ?(?:in|mm)) (.+)");
    private static final double LARGEST_mm = 300;

    private CouplingText() {}

    /** The coupling that a value of a file says. */
    public static Coupling read(YamlValue value) {
        return value.read(FORM, CouplingText::parse);
    }

    /** The coupling of a text.
     *
     * @throws InvalidInput without place: the caller knows it
     */
    public static Coupling parse(String text) {
        Matcher parts = PARTS.matcher(text);
        if (!parts.matches()) {
            throw new InvalidInput("coupling", text, FORM, "");
        }
        Length size = QuantityText.length(parts.group(1));
        if (!(size.metres() > 0) || size.millimetres() > LARGEST_mm) {
            throw new InvalidInput("size of a coupling", text, "up to 12 in or 300 mm, above 0", "");
        }
        return new Coupling(size, parts.group(2));
    }
}
