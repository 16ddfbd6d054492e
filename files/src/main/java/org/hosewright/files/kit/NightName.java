package org.hosewright.files.kit;

import java.util.Locale;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.kit.Kit;

/** The id under which a kit remembers a test night. */
public final class NightName {
    private static final int LONGEST = 40;
    private static final int DATE = "-2026-05-12".length();

    private NightName() {}

    /** The id that a name makes: small letters, digits and dashes ("October flow test" is october-flow-test). */
    public static String id(String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String begun = plain.matches("[a-z].*") ? plain : plain.isEmpty() ? "night" : "night-" + plain;
        return cut(begun, LONGEST);
    }

    /** The report under its id; with its date behind it where the kit remembers another night of that name. */
    static DrillReport named(DrillReport report) {
        return report.named(of(report, report.kit()));
    }

    private static String of(DrillReport report, Kit kit) {
        String name = id(report.name());
        var before = kit.evidence().get(name);
        boolean other = before != null && !before.date().equals(report.date());
        return other && report.date().isPresent()
                ? cut(name, LONGEST - DATE) + "-" + report.date().get()
                : name;
    }

    private static String cut(String id, int longest) {
        return id.length() > longest ? id.substring(0, longest).replaceAll("-+$", "") : id;
    }
}
