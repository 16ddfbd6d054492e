package org.hosewright.files.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hosewright.files.term.Names;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.HoseRecord;

/** Hoses in laying order as people write them: {@code 4 x attack-175 + 200 ft leader-3}. */
public final class Chain {
    /** More sections than this are feet counted as sections, or no line that anyone stretches. */
    public static final int MOST_SECTIONS = 60;

    private static final Pattern SECTIONS = Pattern.compile("(\\d{1,9}) ?x ?(\\S+)");
    private static final String FORMS = "'4 x ID' for sections or '200 ft ID' for a length, joined by +";

    private Chain() {}

    /** The stretches of a chain.
     *
     * @param hoses the hoses the company has
     * @throws InvalidInput without place: the caller knows it
     */
    public static List<Stretch> parse(String text, Map<String, HoseRecord> hoses) {
        List<Stretch> chain = new ArrayList<>();
        for (String part : text.split("\\+", -1)) {
            chain.add(stretch(part.strip(), text, hoses));
        }
        return chain;
    }

    /** A chain written out in a system of units, as a kit file of it would; it reads back as the same stretches. */
    public static String text(List<Stretch> chain, Map<String, HoseRecord> hoses, UnitSystem units) {
        return text(chain, hoses, new Written(units, false));
    }

    /** A chain written out; it reads back as the same stretches. */
    static String text(List<Stretch> chain, Map<String, HoseRecord> hoses, Written written) {
        return chain.stream().map(part -> text(part, hoses, written)).collect(Collectors.joining(" + "));
    }

    /** The hose of an id.
     *
     * @throws InvalidInput without place: there is no such hose
     */
    public static Hose getHose(String id, Map<String, HoseRecord> hoses) {
        HoseRecord found = hoses.get(id);
        if (found == null) {
            throw new InvalidInput("hose", id, Names.known(id, hoses.keySet()), "");
        }
        return found.hose();
    }

    /** Refuses a length that can only be a count of sections. */
    public static Length checked(Length length, Hose hose, String written) {
        double section_m = hose.section().metres();
        if (length.metres() < section_m * (1 - 1e-9)) {
            String allowed = "at least one section of " + hose.id() + ", " + section(hose) + ", or '" + "4 x "
                    + hose.id() + "' to count sections";
            throw new InvalidInput("length of " + hose.id(), written, allowed, "");
        }
        return length;
    }

    private static String section(Hose hose) {
        double feet = hose.section().feet();
        boolean inFeet = Math.abs(feet - Math.rint(feet)) < 1e-6;
        return QuantityShown.of(inFeet ? UnitSystem.US : UnitSystem.SI).text(hose.section());
    }

    private static Stretch stretch(String part, String whole, Map<String, HoseRecord> hoses) {
        Matcher sections = SECTIONS.matcher(part);
        if (sections.matches()) {
            Hose hose = getHose(sections.group(2), hoses);
            int count = Integer.parseInt(sections.group(1));
            if (count < 1 || count > MOST_SECTIONS) {
                String allowed = "1 to " + MOST_SECTIONS + " sections, or a length as in '200 ft " + hose.id() + "'";
                throw new InvalidInput("count of sections", part, allowed, "");
            }
            return new Stretch(hose.id(), new Length(count * hose.section().metres()));
        }
        int space = part.lastIndexOf(' ');
        if (space < 0) {
            throw new InvalidInput("hose", part.isEmpty() ? whole : part, FORMS, "");
        }
        return byLength(part, part.substring(0, space).strip(), part.substring(space + 1), hoses);
    }

    private static Stretch byLength(String part, String length, String id, Map<String, HoseRecord> hoses) {
        if (length.matches("[0-9.]+")) {
            throw new InvalidInput("hose", part, FORMS.replace("ID", id), "");
        }
        Length read = QuantityText.length(length);
        if (read.metres() <= 0) {
            throw new InvalidInput("length of hose", part, "a length above 0", "");
        }
        return new Stretch(id, checked(read, getHose(id, hoses), part));
    }

    private static String text(Stretch part, Map<String, HoseRecord> hoses, Written written) {
        HoseRecord hose = hoses.get(part.hose());
        double section_m = hose == null ? 0 : hose.hose().section().metres();
        long count = section_m > 0 ? Math.round(part.length().metres() / section_m) : 0;
        boolean whole = count >= 1
                && count <= MOST_SECTIONS
                && count * section_m == part.length().metres();
        return (whole ? count + " x " : written.length(part.length()) + " ") + part.hose();
    }
}
