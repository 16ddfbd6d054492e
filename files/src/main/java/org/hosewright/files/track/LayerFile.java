package org.hosewright.files.track;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.error.InvalidInput;

/** A layer of the company's own map: a GeoJSON feature collection (RFC 7946), checked place by place. */
final class LayerFile {
    private static final String ORDER = "longitude from -180 to 180, then latitude from -90 to 90";
    private static final int DEEPEST = 4;

    private LayerFile() {}

    /** Checks a layer's text.
     *
     * @param source name of what is read, for errors
     * @throws InvalidInput no feature collection, or a place that is none; named
     */
    static void check(String text, String source) {
        JsonNode document = GeoJsonText.parse(text.getBytes(StandardCharsets.UTF_8), source);
        if (!document.path("type").asText().equals("FeatureCollection")
                || !document.path("features").isArray()) {
            throw new InvalidInput("type", document.path("type").asText(), "FeatureCollection", source);
        }
        int count = 0;
        for (JsonNode feature : document.path("features")) {
            count++;
            JsonNode geometry = feature.path("geometry");
            if (!feature.path("type").asText().equals("Feature")
                    || !geometry.path("coordinates").isArray()) {
                throw new InvalidInput(
                        "feature",
                        feature.path("type").asText(),
                        "a Feature with coordinates",
                        source + ", feature " + count);
            }
            places(geometry.path("coordinates"), DEEPEST, source + ", feature " + count);
        }
    }

    /** A place of a checked layer; empty where it has no feature. */
    static Optional<Position> findPlace(String text) {
        JsonNode place = GeoJsonText.parse(text.getBytes(StandardCharsets.UTF_8), "layer")
                .path("features")
                .path(0)
                .path("geometry")
                .path("coordinates");
        while (place.path(0).isArray()) {
            place = place.path(0);
        }
        return place.path(1).isNumber()
                ? Optional.of(
                        new Position(place.path(1).asDouble(), place.path(0).asDouble()))
                : Optional.empty();
    }

    private static void places(JsonNode coordinates, int deep, String where) {
        if (deep == 0 || !coordinates.isArray() || coordinates.isEmpty()) {
            throw new InvalidInput("coordinates", coordinates.toString(), ORDER, where);
        }
        if (!coordinates.path(0).isNumber()) {
            coordinates.forEach(inner -> places(inner, deep - 1, where));
            return;
        }
        if (!coordinates.path(1).isNumber()) {
            throw new InvalidInput("position", coordinates.toString(), ORDER, where);
        }
        Swapped.check(coordinates.path(1).asDouble(), coordinates.path(0).asDouble(), ORDER, where);
    }
}
