package org.hosewright.files.order;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** Reads a set of ordered pressures back from its text. */
final class OrderReader {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final JsonNode root;

    OrderReader(String text) {
        try {
            root = JSON.readTree(text);
        } catch (JacksonException e) {
            throw new InvalidInput("order", e.getOriginalMessage(), "an order as this program writes it", "");
        }
    }

    OrderSet set() {
        if (root.path("format").asInt() != OrderText.FORMAT) {
            throw new InvalidInput("format of the order", root.path("format").asText(), "1", "");
        }
        String word = text(root, "units");
        UnitSystem units = Arrays.stream(UnitSystem.values())
                .filter(system -> system.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("units of the order", word, "us or si", ""));
        return new OrderSet(
                units,
                made(text(root, "made")),
                RoundingWord.way(text(root, "rounding")),
                list(root, "lines", this::line));
    }

    private OrderedLine line(JsonNode node) {
        return new OrderedLine(
                text(node, "engine"),
                text(node, "discharge"),
                text(node, "package"),
                text(node, "gauge"),
                text(node, "evidence"),
                QuantityText.pressure(text(node, "floorAdder")),
                findPressure(node, "mostGauge"),
                QuantityText.length(text(node, "longestSafe")),
                list(node, "pressures", this::pressure));
    }

    private OrderedPressure pressure(JsonNode node) {
        return new OrderedPressure(
                QuantityText.length(text(node, "length")),
                QuantityText.pressure(text(node, "figure")),
                QuantityText.flow(text(node, "flow")),
                QuantityText.pressure(text(node, "tip")),
                QuantityText.force(text(node, "reaction")),
                node.path("tested").asBoolean(),
                node.has("refusal") ? list(node, "refusal", JsonNode::asText) : List.of(),
                findPressure(node, "nearest"));
    }

    private static Optional<Pressure> findPressure(JsonNode node, String key) {
        return node.has(key) ? Optional.of(QuantityText.pressure(text(node, key))) : Optional.empty();
    }

    private static LocalDate made(String day) {
        try {
            return LocalDate.parse(day);
        } catch (DateTimeException e) {
            throw new InvalidInput("made", day, "a day as in 2026-05-12", "");
        }
    }

    private static String text(JsonNode node, String key) {
        JsonNode found = node.path(key);
        if (!found.isTextual()) {
            throw new InvalidInput(key + " in the order", found.toString(), "a text", "");
        }
        return found.textValue();
    }

    private static <T> List<T> list(JsonNode node, String key, Function<JsonNode, T> read) {
        JsonNode found = node.path(key);
        if (!found.isArray()) {
            throw new InvalidInput(key + " in the order", found.toString(), "a list", "");
        }
        List<T> items = new ArrayList<>();
        found.forEach(item -> items.add(read.apply(item)));
        return items;
    }
}
