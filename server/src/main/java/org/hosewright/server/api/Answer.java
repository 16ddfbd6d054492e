package org.hosewright.server.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Small ways to answer. */
final class Answer {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private Answer() {}

    /** Plain maps, texts and numbers as JSON. */
    static JsonNode tree(Object plain) {
        return JSON.valueToTree(plain);
    }

    /** A JSON document of our own writing. */
    static JsonNode parse(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a result that is no JSON", e);
        }
    }

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    static void json(Context answer, ObjectNode object) {
        answer.contentType("application/json; charset=utf-8").result(object.toString());
    }

    /** As {@link #json(Context, ObjectNode)}, for what is written already. */
    static void json(Context answer, String object) {
        answer.contentType("application/json; charset=utf-8").result(object);
    }

    /** Sends a file that a browser keeps under a name. */
    static void file(Context answer, String name, String type, byte[] content) {
        answer.header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .contentType(type)
                .result(content);
    }

    /** What people call a thing, fit for a file's name.
     *
     * @param otherwise the name where none of its letters will do
     */
    static String fileName(String called, String otherwise) {
        String plain =
                called.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? otherwise : plain;
    }

    static void file(Context answer, String name, String type, String content) {
        file(answer, name, type + "; charset=utf-8", content.getBytes(StandardCharsets.UTF_8));
    }
}
