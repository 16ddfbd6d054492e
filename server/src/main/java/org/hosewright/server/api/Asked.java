package org.hosewright.server.api;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.server.door.Visitor;
import org.hosewright.server.guard.Body;
import org.hosewright.server.guard.Refusal;

/** The JSON object that came with a request, read strictly: an unknown key is refused, never passed over. */
final class Asked {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final ObjectNode object;
    private final Visitor visitor;

    private Asked(ObjectNode object, Visitor visitor) {
        this.object = object;
        this.visitor = visitor;
    }

    /** The object a request brought.
     *
     * @param keys all keys it may have
     */
    static Asked of(Context request, Set<String> keys) {
        return of(request, keys, Body.MOST_BYTES);
    }

    /** As {@link #of(Context, Set)}, for content that may be longer or must be shorter.
     *
     * @param most of the content [bytes]
     */
    static Asked of(Context request, Set<String> keys, int most) {
        try {
            return of(JSON.readTree(Body.text(request, most)), "the request", Visitor.of(request))
                    .only(keys);
        } catch (JacksonException e) {
            throw new Refusal(400, "Not JSON", "The content is not one JSON object: " + e.getOriginalMessage());
        }
    }

    private static Asked of(JsonNode node, String what, Visitor visitor) {
        if (node instanceof ObjectNode found) {
            return new Asked(found, visitor);
        }
        throw new InvalidInput(what, node.toString(), "a JSON object", "");
    }

    /** The same object, refused where it has another key than these. */
    Asked only(Set<String> keys) {
        object.fieldNames().forEachRemaining(key -> {
            if (!keys.contains(key)) {
                throw new InvalidInput(
                        "key",
                        key,
                        "one of " + String.join(", ", keys.stream().sorted().toList()),
                        "");
            }
        });
        return this;
    }

    String text(String key) {
        return findText(key).orElseThrow(() -> new InvalidInput(key, "", "a text", ""));
    }

    Optional<String> findText(String key) {
        JsonNode node = object.path(key);
        if (node.isMissingNode()) {
            return Optional.empty();
        }
        if (!node.isTextual()) {
            throw new InvalidInput(key, node.toString(), "a text in quotes", "");
        }
        return Optional.of(node.textValue());
    }

    long number(String key) {
        JsonNode node = object.path(key);
        if (!node.isIntegralNumber()) {
            throw new InvalidInput(key, node.isMissingNode() ? "" : node.toString(), "a whole number", "");
        }
        return node.longValue();
    }

    boolean isYes(String key) {
        JsonNode node = object.path(key);
        if (!node.isBoolean()) {
            throw new InvalidInput(key, node.isMissingNode() ? "" : node.toString(), "true or false", "");
        }
        return node.booleanValue();
    }

    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (JsonNode node : array(key)) {
            texts.add(node.asText());
        }
        return texts;
    }

    /** An object of its own format, as text for the reader that knows it. */
    String json(String key) {
        return object(key).object.toString();
    }

    Asked object(String key) {
        return of(object.path(key), key, visitor);
    }

    List<Asked> objects(String key) {
        List<Asked> objects = new ArrayList<>();
        for (JsonNode node : array(key)) {
            objects.add(of(node, "an entry of " + key, visitor));
        }
        return objects;
    }

    /** Text by column. */
    Map<String, String> cells(String key) {
        Map<String, String> cells = new LinkedHashMap<>();
        Asked found = object(key);
        found.object.fieldNames().forEachRemaining(column -> cells.put(column, found.text(column)));
        return cells;
    }

    /** Who asks, and why: under the name of the account, where people have accounts. */
    Act act() {
        return visitor.act(
                findText("who").map(String::strip).orElse(""), findText("why").orElse(""));
    }

    private JsonNode array(String key) {
        JsonNode node = object.path(key);
        if (!node.isArray()) {
            throw new InvalidInput(key, node.isMissingNode() ? "" : node.toString(), "a list", "");
        }
        return node;
    }
}
