package org.hosewright.documents.part;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** Quantities, days and names as they stand on paper.
 *
 * @param units the company's units
 */
public record Figures(UnitSystem units) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    public QuantityShown shown() {
        return QuantityShown.of(units);
    }

    /** Number and unit. */
    public String text(Quantity quantity) {
        return shown().text(quantity);
    }

    /** The number alone, for a place that names the unit once for many. */
    public String number(Quantity quantity) {
        String text = text(quantity);
        String unit = " " + units.unitOf(quantity);
        return text.endsWith(unit) ? text.substring(0, text.length() - unit.length()) : text;
    }

    /** Number, unit and 95 % half-width. */
    public String band(Known<?> known) {
        return shown().withBand(known);
    }

    /** Number and 95 % half-width, for a place that names the unit once for many. */
    public String bandNumber(Known<?> known) {
        return band(known).replace(" " + units.unitOf(known.value()), "");
    }

    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** An id as one says it: "crosslay-1" is "crosslay 1". */
    public static String name(String id) {
        return id.replace('-', ' ');
    }

    /** The paper of a company: letter where it speaks in psi, A4 where in kPa. */
    public String paper() {
        return units == UnitSystem.US ? "letter" : "A4";
    }

    /** The first letter made large, for the start of a sentence. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
