package org.hosewright.files.term;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityText;

/** The quantities of a YAML file, each refused with its place where it cannot be meant. */
public final class Quantities {
    private static final String HOSE_LOSS = "a loss such as '9.19 psi / 100 ft @ 100 gpm'";
    private static final String POINT_LOSS = "a loss such as '2.06 psi @ 100 gpm'";

    private Quantities() {}

    /** A pressure above 0. */
    public static Pressure pressure(YamlValue value) {
        return (Pressure) positive(Kind.PRESSURE, value);
    }

    /** A flow above 0. */
    public static Flow flow(YamlValue value) {
        return (Flow) positive(Kind.FLOW, value);
    }

    /** A rise with its sign. */
    public static Length rise(YamlValue value) {
        return value.read(Kind.LENGTH.inWords(), QuantityText::length);
    }

    /** A length within bounds that it is usually in; outside them a unit was mixed up. */
    public static Length length(YamlValue value, Length least, Length most, String bounds) {
        Length length = (Length) positive(Kind.LENGTH, value);
        if (length.metres() < least.metres() || length.metres() > most.metres()) {
            throw value.refused("length", bounds);
        }
        return length;
    }

    /** A quantity above 0. */
    public static Quantity positive(Kind kind, YamlValue value) {
        String allowed = kind.inWords() + ", above 0";
        return value.read(kind.inWords(), text -> {
            boolean negative = text.startsWith("-") || text.startsWith("\u2212");
            Quantity quantity = negative ? kind.ofSi(0) : QuantityText.parse(kind, text);
            if (!(quantity.si() > 0)) {
                throw new InvalidInput(kind.word(), text, allowed, "");
            }
            return quantity;
        });
    }

    public static Known<HoseLoss> hoseLoss(YamlValue value) {
        refuseBare(value, "hose loss", HOSE_LOSS);
        Known<HoseLoss> loss = value.read(HOSE_LOSS, QuantityText::hoseLoss);
        if (!(loss.value().r() > 0)) {
            throw value.refused("hose loss", HOSE_LOSS + ", above 0");
        }
        return loss;
    }

    /** A loss that may be 0. */
    public static Known<PointLoss> pointLoss(YamlValue value) {
        refuseBare(value, "loss", POINT_LOSS);
        return value.read(POINT_LOSS, QuantityText::pointLoss);
    }

    private static void refuseBare(YamlValue value, String what, String allowed) {
        if (value.text(allowed).matches("[-+0-9.]+")) {
            throw value.refused(what, allowed);
        }
    }

    /** A day, as in 2026-05-12. */
    public static LocalDate day(YamlValue value) {
        String allowed = "a day as year-month-day, as in 2026-05-12";
        return value.read(allowed, text -> {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException e) {
                throw new InvalidInput("day", text, allowed, "");
            }
        });
    }

    /** A whole number within bounds. */
    public static int whole(YamlValue value, String what, int least, int most) {
        String allowed = "a whole number from " + least + " to " + most;
        String text = value.text(allowed);
        boolean digits = text.length() <= 9 && !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
        if (!digits || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
            throw value.refused(what, allowed);
        }
        return Integer.parseInt(text);
    }
}
