package org.hosewright.files.walk;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hosewright.files.json.JsonObject;
import org.hosewright.files.track.Swapped;
import org.hosewright.ground.stretch.PartKind;
import org.hosewright.ground.stretch.Slack;
import org.hosewright.ground.stretch.StairRule;
import org.hosewright.ground.stretch.Stairs;
import org.hosewright.ground.stretch.StretchPart;
import org.hosewright.ground.stretch.TaughtStairs;
import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.ledger.stretch.KeptStretch;

/** Reads a stretch from its text; what is left out is not known. */
final class StretchReader {
    private static final String SOURCE = "stretch";
    private static final Set<String> KEYS = Set.of(
            "format",
            "address",
            "stands",
            "way",
            "pictures",
            "cautions",
            "private",
            "packages",
            "second",
            "parts",
            "stairs",
            "corners",
            "obstacles",
            "reserve",
            "up",
            "down",
            "laid");
    private static final String ORDER = "longitude from -180 to 180, then latitude from -90 to 90";

    /** Longer texts are no notes, longer lists no stretch. */
    private static final int MOST_LETTERS = 4000;

    private static final int MOST_ENTRIES = 500;

    private StretchReader() {}

    static KeptStretch of(String text) {
        JsonObject json = JsonObject.of(text, SOURCE).only(KEYS).edition(StretchText.FORMAT);
        return new KeptStretch(
                note(json, "address"),
                site(json),
                json.texts("packages"),
                json.findText("second"),
                json.objects("parts").stream().map(StretchReader::part).toList(),
                json.has("stairs") ? Optional.of(stairs(json.object("stairs"))) : Optional.empty(),
                slack(json),
                json.has("reserve") ? json.number("reserve") : 0,
                KnownLength.rise(json.findText("up"), json.findText("down")),
                json.has("laid")
                        ? json.objects("laid").stream().map(StretchReader::laid).toList()
                        : List.of());
    }

    private static KeptStretch.Site site(JsonObject json) {
        return new KeptStretch.Site(
                note(json, "stands"),
                json.has("way")
                        ? bounded(json.numbers("way")).stream()
                                .map(StretchReader::position)
                                .toList()
                        : List.of(),
                json.has("pictures") ? bounded(json.texts("pictures")) : List.of(),
                json.has("cautions") ? bounded(json.texts("cautions")) : List.of(),
                note(json, "private"));
    }

    private static String note(JsonObject json, String key) {
        String note = json.findText(key).orElse("").strip();
        if (note.length() > MOST_LETTERS) {
            throw new InvalidInput(key, note.length() + " letters", "at most " + MOST_LETTERS, SOURCE);
        }
        return note;
    }

    private static <T> List<T> bounded(List<T> all) {
        if (all.size() > MOST_ENTRIES) {
            throw new InvalidInput("entries", Integer.toString(all.size()), "at most " + MOST_ENTRIES, SOURCE);
        }
        return all;
    }

    private static Position position(List<Double> place) {
        if (place.size() < 2) {
            throw new InvalidInput("position", place.toString(), ORDER, SOURCE);
        }
        return Swapped.check(place.get(1), place.get(0), ORDER, SOURCE);
    }

    private static StretchPart part(JsonObject part) {
        part.only(Set.of("kind", "length", "says"));
        String word = part.text("kind");
        PartKind kind = Arrays.stream(PartKind.values())
                .filter(one -> one.word().equals(word) && one != PartKind.STAIRS && one != PartKind.RESERVE)
                .findFirst()
                .orElseThrow(() -> new InvalidInput(
                        "part of the stretch", word, "to-door, inside, cover or working", part.where()));
        return new StretchPart(kind, KnownLength.of(part.text("length")), note(part, "says"));
    }

    private static Stairs stairs(JsonObject stairs) {
        stairs.only(Set.of("climbed", "rule", "each"));
        String word = stairs.text("rule");
        boolean own = word.equals(StairRule.OwnLength.WORD);
        if (!own && stairs.has("each")) {
            throw new InvalidInput(
                    "hose for a floor",
                    stairs.text("each"),
                    "the rule " + StairRule.OwnLength.WORD + " beside it",
                    stairs.where());
        }
        StairRule rule =
                own ? new StairRule.OwnLength(QuantityText.length(stairs.text("each"))) : taught(word, stairs.where());
        return new Stairs(stairs.number("climbed"), rule);
    }

    private static StairRule taught(String word, String where) {
        return Arrays.stream(TaughtStairs.values())
                .filter(one -> one.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("rule for stairs", word, rules(), where));
    }

    private static String rules() {
        return Arrays.stream(TaughtStairs.values()).map(TaughtStairs::word).collect(Collectors.joining(", ")) + " or "
                + StairRule.OwnLength.WORD + ": rules differ by place, choose your own";
    }

    private static Slack slack(JsonObject json) {
        Bends corners = bends(json, "corners");
        Bends obstacles = bends(json, "obstacles");
        return new Slack(corners.count(), corners.each(), obstacles.count(), obstacles.each());
    }

    private record Bends(int count, Length each) {}

    private static Bends bends(JsonObject json, String key) {
        if (!json.has(key)) {
            return new Bends(0, new Length(0));
        }
        JsonObject bends = json.object(key).only(Set.of("count", "each"));
        return new Bends(bends.number("count"), QuantityText.length(bends.text("each")));
    }

    private static KeptStretch.LaidOnce laid(JsonObject once) {
        once.only(Set.of("on", "used"));
        try {
            return new KeptStretch.LaidOnce(LocalDate.parse(once.text("on")), QuantityText.length(once.text("used")));
        } catch (DateTimeException e) {
            throw new InvalidInput("day", once.text("on"), "a day such as 2026-05-12", once.where());
        }
    }
}
