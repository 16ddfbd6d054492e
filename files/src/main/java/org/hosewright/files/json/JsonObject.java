package org.hosewright.files.json;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.hosewright.hydraulics.error.InvalidInput;

/** A JSON object, read strictly: a key twice, an unknown key or another kind of value is refused, its place named. */
public final class JsonObject {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final ObjectNode object;
    private final String where;

    private JsonObject(JsonNode node, String where) {
        if (!(node instanceof ObjectNode found)) {
            throw new InvalidInput("value", node.toString(), "a JSON object", where);
        }
        this.object = found;
        this.where = where;
    }

    /** The object that a text holds.
     *
     * @param source name of the text, for errors
     * @throws InvalidInput the text is not one JSON object
     */
    public static JsonObject of(String text, String source) {
        try {
            return new JsonObject(JSON.readTree(text), source);
        } catch (JacksonException e) {
            throw new InvalidInput("text", e.getOriginalMessage(), "one JSON object", source);
        }
    }

    /** The same object, refused where it has another key than these. */
    public JsonObject only(Set<String> keys) {
        object.fieldNames().forEachRemaining(key -> {
            if (!keys.contains(key)) {
                throw new InvalidInput(
                        "key",
                        key,
                        "one of " + String.join(", ", keys.stream().sorted().toList()),
                        where);
            }
        });
        return this;
    }

    /** Refuses another edition of a format. */
    public JsonObject edition(int format) {
        if (number("format") != format) {
            throw new InvalidInput("format", Long.toString(number("format")), Integer.toString(format), where);
        }
        return this;
    }

    public String text(String key) {
        return findText(key).orElseThrow(() -> new InvalidInput(key, "", "a text", where));
    }

    public Optional<String> findText(String key) {
        JsonNode node = object.path(key);
        if (node.isMissingNode()) {
            return Optional.empty();
        }
        if (!node.isTextual()) {
            throw new InvalidInput(key, node.toString(), "a text in quotes", where);
        }
        return Optional.of(node.textValue());
    }

    /** A quantity as text; a bare number is refused, never guessed.
     *
     * @param read reads it from the text
     */
    public <Q> Q quantity(String key, Function<String, Q> read) {
        JsonNode node = object.path(key);
        if (node.isNumber()) {
            throw new InvalidInput(key, node.toString(), "a number with its unit, in quotes, as in '150 psi'", where);
        }
        String text = text(key);
        try {
            return read.apply(text);
        } catch (InvalidInput refused) {
            throw refused.at(where + ", " + key);
        }
    }

    /** As {@link #quantity}; empty where it does not stand there. */
    public <Q> Optional<Q> findQuantity(String key, Function<String, Q> read) {
        return has(key) ? Optional.of(quantity(key, read)) : Optional.empty();
    }

    /** True or false. */
    public boolean flag(String key) {
        JsonNode node = object.path(key);
        if (!node.isBoolean()) {
            throw new InvalidInput(key, node.isMissingNode() ? "" : node.toString(), "true or false", where);
        }
        return node.booleanValue();
    }

    public boolean has(String key) {
        return object.has(key);
    }

    /** A whole number, as large as people count. */
    public int number(String key) {
        JsonNode node = object.path(key);
        if (!node.isIntegralNumber() || !node.canConvertToInt()) {
            throw new InvalidInput(key, node.isMissingNode() ? "" : node.toString(), "a whole number", where);
        }
        return node.intValue();
    }

    public JsonObject object(String key) {
        return new JsonObject(object.path(key), where + ", " + key);
    }

    public List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (JsonNode node : array(key)) {
            if (!node.isTextual()) {
                throw new InvalidInput(key, node.toString(), "texts in quotes", where);
            }
            texts.add(node.textValue());
        }
        return texts;
    }

    public List<JsonObject> objects(String key) {
        List<JsonObject> objects = new ArrayList<>();
        for (JsonNode node : array(key)) {
            objects.add(new JsonObject(node, where + ", " + key + " " + (objects.size() + 1)));
        }
        return objects;
    }

    /** A list of lists of numbers, such as positions. */
    public List<List<Double>> numbers(String key) {
        List<List<Double>> all = new ArrayList<>();
        for (JsonNode node : array(key)) {
            List<Double> one = new ArrayList<>();
            node.forEach(number -> one.add(number.isNumber() ? number.doubleValue() : Double.NaN));
            if (!node.isArray() || one.contains(Double.NaN)) {
                throw new InvalidInput(key, node.toString(), "lists of numbers", where);
            }
            all.add(one);
        }
        return all;
    }

    /** Where it stands, for errors. */
    public String where() {
        return where;
    }

    private JsonNode array(String key) {
        JsonNode node = object.path(key);
        if (!node.isArray()) {
            throw new InvalidInput(key, node.isMissingNode() ? "" : node.toString(), "a list", where);
        }
        return node;
    }
}
