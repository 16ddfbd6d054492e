package org.hosewright.files.exchange;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.hosewright.files.json.JsonObject;
import org.hosewright.files.term.CouplingText;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.exchange.HandedHose;
import org.hosewright.ledger.exchange.HandedNozzle;
import org.hosewright.ledger.exchange.HandedOrder;
import org.hosewright.ledger.exchange.HandedPackage;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** Reads a handover from its text; signed or not, what a stranger wrote is bounded and checked. */
record HandoverReader(String source) {
    private static final Set<String> TOP =
            Set.of("company", "units", "issued", "until", "order", "packages", "withdrawn");
    private static final Set<String> ORDER = Set.of("number", "code", "signed", "by");
    private static final Set<String> PACKAGE = Set.of(
            "package",
            "engine",
            "discharge",
            "gauge",
            "evidence",
            "floorAdder",
            "mostGauge",
            "longestSafe",
            "hose",
            "nozzle",
            "crew",
            "target",
            "least",
            "pressures");
    private static final Set<String> HOSE = Set.of("name", "length", "diameter", "section", "coupling");
    private static final Set<String> NOZZLE = Set.of("name", "what", "flow", "at", "coupling");
    private static final Set<String> PRESSURE = Set.of("length", "figure", "flow", "tip", "reaction", "tested");
    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_TEXT = 1000;

    Handover handover(String text) {
        JsonObject json = JsonObject.of(text, source).only(TOP);
        boolean withdraws = json.has("withdrawn");
        return new Handover(
                name(json, "company"),
                units(json),
                time(json, "issued", Instant::parse, "a moment as in 2026-05-12T18:00:00Z"),
                day(json, "until"),
                json.has("order") ? Optional.of(order(json.object("order").only(ORDER))) : Optional.empty(),
                json.has("packages")
                        ? json.objects("packages").stream()
                                .map(HandoverReader::handed)
                                .toList()
                        : List.of(),
                withdraws ? words(json, "withdrawn") : "");
    }

    private static UnitSystem units(JsonObject json) {
        return switch (json.text("units")) {
            case "us" -> UnitSystem.US;
            case "si" -> UnitSystem.SI;
            default -> throw new InvalidInput("units", json.text("units"), "us or si", json.where());
        };
    }

    private static HandedOrder order(JsonObject json) {
        return new HandedOrder(json.number("number"), name(json, "code"), day(json, "signed"), name(json, "by"));
    }

    private static HandedPackage handed(JsonObject any) {
        JsonObject json = any.only(PACKAGE);
        return new HandedPackage(
                line(json),
                json.objects("hose").stream().map(HandoverReader::hose).toList(),
                nozzle(json.object("nozzle").only(NOZZLE)),
                json.has("crew") ? OptionalInt.of(json.number("crew")) : OptionalInt.empty(),
                find(json, "target", QuantityText::flow),
                find(json, "least", QuantityText::flow));
    }

    private static OrderedLine line(JsonObject json) {
        return new OrderedLine(
                name(json, "engine"),
                name(json, "discharge"),
                name(json, "package"),
                words(json, "gauge"),
                words(json, "evidence"),
                get(json, "floorAdder", QuantityText::pressure),
                find(json, "mostGauge", QuantityText::pressure),
                json.quantity("longestSafe", QuantityText::length),
                json.objects("pressures").stream().map(HandoverReader::pressure).toList());
    }

    private static HandedHose hose(JsonObject any) {
        JsonObject json = any.only(HOSE);
        return new HandedHose(
                name(json, "name"),
                get(json, "length", QuantityText::length),
                get(json, "diameter", QuantityText::length),
                get(json, "section", QuantityText::length),
                json.findQuantity("coupling", CouplingText::parse));
    }

    private static HandedNozzle nozzle(JsonObject json) {
        return new HandedNozzle(
                name(json, "name"),
                words(json, "what"),
                get(json, "flow", QuantityText::flow),
                get(json, "at", QuantityText::pressure),
                json.findQuantity("coupling", CouplingText::parse));
    }

    private static OrderedPressure pressure(JsonObject any) {
        JsonObject json = any.only(PRESSURE);
        return new OrderedPressure(
                get(json, "length", QuantityText::length),
                get(json, "figure", QuantityText::pressure),
                get(json, "flow", QuantityText::flow),
                get(json, "tip", QuantityText::pressure),
                get(json, "reaction", QuantityText::force),
                json.flag("tested"),
                List.of(),
                Optional.empty());
    }

    private static <Q extends Quantity> Optional<Q> find(JsonObject json, String key, Function<String, Q> read) {
        return json.has(key) ? Optional.of(get(json, key, read)) : Optional.empty();
    }

    /** A quantity above 0. */
    private static <Q extends Quantity> Q get(JsonObject json, String key, Function<String, Q> read) {
        Q found = json.quantity(key, read);
        if (!(found.si() > 0)) {
            throw new InvalidInput(key, json.text(key), "above 0", json.where());
        }
        return found;
    }

    private static LocalDate day(JsonObject json, String key) {
        return time(json, key, LocalDate::parse, "a day as in 2026-05-12");
    }

    private static <T> T time(JsonObject json, String key, Function<String, T> parse, String allowed) {
        try {
            return parse.apply(json.text(key));
        } catch (DateTimeException e) {
            throw new InvalidInput(key, json.text(key), allowed, json.where());
        }
    }

    private static String name(JsonObject json, String key) {
        return bounded(json, key, LONGEST_NAME);
    }

    private static String words(JsonObject json, String key) {
        return bounded(json, key, LONGEST_TEXT);
    }

    /** Words on one line, without the marks that turn or hide what stands beside them. */
    private static String bounded(JsonObject json, String key, int most) {
        String text = json.text(key);
        boolean hides = text.codePoints().anyMatch(HandoverReader::hides);
        if (text.isBlank() || text.length() > most || hides) {
            throw new InvalidInput(key, text.strip(), "plain words, 1 to " + most + " characters", json.where());
        }
        return text;
    }

    private static boolean hides(int character) {
        int kind = Character.getType(character);
        return Character.isISOControl(character)
                || kind == Character.FORMAT
                || kind == Character.LINE_SEPARATOR
                || kind == Character.PARAGRAPH_SEPARATOR
                || kind == Character.PRIVATE_USE
                || kind == Character.SURROGATE
                || kind == Character.UNASSIGNED;
    }
}
