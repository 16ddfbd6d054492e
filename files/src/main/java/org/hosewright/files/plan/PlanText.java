package org.hosewright.files.plan;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.plan.Budget;
import org.hosewright.evidence.plan.Optimality;
import org.hosewright.evidence.plan.Pace;
import org.hosewright.evidence.plan.Question;
import org.hosewright.files.json.JsonObject;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.plan.KeptPlan;
import org.hosewright.ledger.plan.PlanAsked;

/** A kept plan as text: canonical JSON (RFC 8785), each quantity with its unit, the rise as up or down. */
public final class PlanText {
    private static final int FORMAT = 1;
    private static final Set<String> KEYS = Set.of("format", "name", "kit", "asked", "worked", "signed");
    private static final Set<String> SIGNED = Set.of("who", "on");
    private static final Set<String> ASKED = Set.of(
            "package",
            "questions",
            "date",
            "hose",
            "up",
            "down",
            "supply",
            "instruments",
            "time",
            "water",
            "optimality");

    private PlanText() {}

    /** The text of a plan.
     *
     * @param units that its quantities are written in
     */
    public static String write(KeptPlan plan, UnitSystem units) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        tree.put("name", plan.name());
        tree.put("kit", plan.kitVersion());
        tree.put("asked", tree(plan.asked(), units));
        if (!plan.worked().isEmpty()) {
            tree.put("worked", plan.worked());
        }
        plan.signed()
                .ifPresent(signed -> tree.put(
                        "signed", Map.of("who", signed.who(), "on", signed.on().toString())));
        return CanonicalJson.text(tree);
    }

    /** The plan that a text holds.
     *
     * @throws InvalidInput it is not a plan of this edition
     */
    public static KeptPlan read(String text) {
        JsonObject json = JsonObject.of(text, "plan").only(KEYS).edition(FORMAT);
        return new KeptPlan(
                json.text("name"),
                json.number("kit"),
                asked(json.object("asked")),
                json.findText("worked").orElse(""),
                signed(json));
    }

    private static Optional<KeptPlan.Signed> signed(JsonObject json) {
        return json.has("signed")
                ? Optional.of(json.object("signed").only(SIGNED))
                        .map(signed -> new KeptPlan.Signed(signed.text("who"), date(signed, "on")))
                : Optional.empty();
    }

    /** What is asked of a night.
     *
     * @throws InvalidInput a key is missing, unknown or not what it should be
     */
    public static PlanAsked readAsked(String text) {
        return asked(JsonObject.of(text, "plan"));
    }

    private static PlanAsked asked(JsonObject json) {
        json.only(ASKED);
        Seconds lasts = json.findText("time").map(QuantityText::seconds).orElse(Budget.EVENING);
        Set<Question> questions = EnumSet.noneOf(Question.class);
        json.texts("questions").forEach(word -> questions.add(Question.of(word)));
        return new PlanAsked(
                json.text("package"),
                questions,
                date(json, "date"),
                json.findText("hose").map(QuantityText::length),
                rise(json),
                json.findText("supply").map(QuantityText::flow),
                json.has("instruments") ? Optional.of(json.texts("instruments")) : Optional.empty(),
                new Budget(lasts, json.findText("water").map(QuantityText::volume), Pace.USUAL),
                optimality(json.findText("optimality").orElse(Optimality.I.word())));
    }

    private static LocalDate date(JsonObject json, String key) {
        try {
            return LocalDate.parse(json.text(key));
        } catch (DateTimeParseException wrong) {
            throw new InvalidInput(
                    "date of the night", wrong.getParsedString(), "a day such as 2026-05-12", json.where());
        }
    }

    /** The rise in metres; a bare sign is no way to say it. */
    private static Length rise(JsonObject json) {
        List<String> given = List.of("up", "down").stream().filter(json::has).toList();
        if (given.size() > 1) {
            throw new InvalidInput("rise", "up and down", "one of the two", json.where());
        }
        double sum_m = 0;
        for (String way : given) {
            String text = json.text(way);
            double height_m = QuantityText.length(text).metres();
            if (height_m < 0) {
                throw new InvalidInput(way, text, "a height of 0 or more", json.where());
            }
            sum_m = way.equals("up") ? height_m : -height_m;
        }
        return new Length(sum_m);
    }

    private static Optimality optimality(String word) {
        return Arrays.stream(Optimality.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("optimality", word, "I or D", ""));
    }

    private static Map<String, Object> tree(PlanAsked asked, UnitSystem units) {
        QuantityShown shown = QuantityShown.of(units);
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("package", asked.hosePackage());
        tree.put("questions", asked.questions().stream().map(Question::word).toList());
        tree.put("date", asked.date().toString());
        asked.onHand().ifPresent(hose -> tree.put("hose", shown.file(hose, units.length())));
        double rise_m = asked.rise().metres();
        if (rise_m != 0) {
            tree.put(rise_m > 0 ? "up" : "down", shown.file(new Length(Math.abs(rise_m)), units.length()));
        }
        asked.supply().ifPresent(flow -> tree.put("supply", shown.file(flow, units.flow())));
        asked.instruments().ifPresent(ids -> tree.put("instruments", ids));
        tree.put("time", shown.file(asked.budget().time(), Unit.MIN));
        asked.budget().water().ifPresent(water -> tree.put("water", shown.file(water, volume(units))));
        tree.put("optimality", asked.optimality().word());
        return tree;
    }

    private static Unit volume(UnitSystem units) {
        return units == UnitSystem.US ? Unit.GAL : Unit.L;
    }
}
