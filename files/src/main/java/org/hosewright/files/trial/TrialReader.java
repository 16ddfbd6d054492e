package org.hosewright.files.trial;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.trial.Measure;
import org.hosewright.files.json.JsonObject;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.trial.KeptTrial;
import org.hosewright.ledger.trial.Opened;
import org.hosewright.ledger.trial.Taken;
import org.hosewright.ledger.trial.TrialPlan;
import org.hosewright.ledger.trial.TrialReading;
import org.hosewright.ledger.trial.TrialTask;

/** Reads a trial from its text. */
final class TrialReader {
    private static final Set<String> KEYS = Set.of(
            "format",
            "name",
            "kinds",
            "holders",
            "measure",
            "held",
            "over",
            "longest",
            "matters",
            "scatter",
            "step",
            "relays",
            "stages",
            "readings",
            "shown",
            "opened");
    private static final Set<String> READING = Set.of("lay", "pump", "tip", "flow", "who", "at", "late", "aside");

    private TrialReader() {}

    static KeptTrial of(String text) {
        JsonObject json = JsonObject.of(text, "trial").only(KEYS).edition(TrialText.FORMAT);
        TrialPlan plan = new TrialPlan(
                json.text("name"), json.texts("kinds"), json.texts("holders"), task(json), json.number("relays"));
        return new KeptTrial(
                plan,
                json.objects("stages").stream()
                        .map(stage -> stage.only(Set.of("order")).texts("order"))
                        .toList(),
                json.objects("readings").stream().map(TrialReader::reading).toList(),
                json.objects("shown").stream().map(TrialReader::shown).toList(),
                json.has("opened") ? Optional.of(opened(json.object("opened"))) : Optional.empty());
    }

    private static TrialTask task(JsonObject json) {
        Measure measure = TrialTexts.measure(json.text("measure"), json.where());
        return TrialTexts.task(measure, json::text);
    }

    private static TrialReading reading(JsonObject json) {
        json.only(READING);
        Taken taken = TrialTexts.taken(json::findText);
        return new TrialReading(
                json.number("lay"),
                taken,
                json.text("who"),
                at(json),
                json.has("late"),
                json.has("aside") ? Optional.of(aside(json.object("aside"))) : Optional.empty());
    }

    private static TrialReading.Aside aside(JsonObject json) {
        json.only(Set.of("who", "why"));
        return new TrialReading.Aside(json.text("who"), json.text("why"));
    }

    private static KeptTrial.Shown shown(JsonObject json) {
        json.only(Set.of("who", "at"));
        return new KeptTrial.Shown(json.text("who"), at(json));
    }

    private static Opened opened(JsonObject json) {
        json.only(Set.of("who", "at", "why", "key"));
        return new Opened(json.text("who"), at(json), json.findText("why").orElse(""), TrialKeyText.kinds(json));
    }

    private static Instant at(JsonObject json) {
        try {
            return Instant.parse(json.text("at"));
        } catch (DateTimeException e) {
            throw new InvalidInput("time", json.text("at"), "a time such as 2026-05-12T18:30:00Z", json.where());
        }
    }
}
