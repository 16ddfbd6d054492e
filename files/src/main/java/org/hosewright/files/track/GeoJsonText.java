package org.hosewright.files.track;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.error.InvalidInput;

/** The text of a GeoJSON document, counted before it is kept. */
final class GeoJsonText {
    private static final int DEEPEST = 16;

    /** Values of a walk of the most positions, with time and accuracy at each. */
    private static final int MOST_VALUES = 8 * Track.MOST_FIXES;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private GeoJsonText() {}

    /** The document.
     *
     * @throws InvalidInput no JSON object, too deep, or more values than any walk has
     */
    static JsonNode parse(byte[] content, String source) {
        try {
            count(content, source);
            JsonNode document = MAPPER.readTree(content);
            if (document == null || !document.isObject()) {
                throw new InvalidInput("GeoJSON file", "no object", "a GeoJSON document", source);
            }
            return document;
        } catch (JsonProcessingException broken) {
            String line = broken.getLocation() == null
                    ? ""
                    : ", line " + broken.getLocation().getLineNr();
            throw new InvalidInput("GeoJSON file", broken.getOriginalMessage(), "whole JSON", source + line);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
    }

    private static void count(byte[] content, String source) throws IOException {
        try (JsonParser parser = MAPPER.createParser(content)) {
            int values = 0;
            int depth = 0;
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                values++;
                depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
                if (values > MOST_VALUES || depth > DEEPEST) {
                    String given = depth > DEEPEST ? depth + " levels deep" : "more than " + MOST_VALUES + " values";
                    String line = ", line " + parser.currentLocation().getLineNr();
                    throw new InvalidInput("GeoJSON file", given, "one walk", source + line);
                }
            }
        }
    }
}
