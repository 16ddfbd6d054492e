package org.hosewright.files.track;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.HeightOrigin;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.track.TrackMark;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;

/** A GeoJSON document as a walk: its first line, and the points whose {@code mark} says what was marked.
 *
 * @source RFC 7946, The GeoJSON Format, 2016: longitude before latitude, parts that end at the antimeridian
 */
final class GeoJsonReader {
    private static final String ORDER = "longitude from -180 to 180, then latitude from -90 to 90";

    private final String source;

    private GeoJsonReader(String source) {
        this.source = source;
    }

    static Track read(byte[] content, String source) {
        return new GeoJsonReader(source).track(GeoJsonText.parse(content, source));
    }

    private Track track(JsonNode document) {
        List<JsonNode> features = new ArrayList<>();
        document.path("features").forEach(features::add);
        if (features.isEmpty()) {
            features.add(document);
        }
        for (int i = 0; i < features.size(); i++) {
            JsonNode feature = features.get(i);
            String kind = geometry(feature).path("type").asText();
            boolean smoothed =
                    Gpx.SMOOTHED.equals(feature.path("properties").path("kind").asText());
            if (!smoothed && (kind.equals("LineString") || kind.equals("MultiLineString"))) {
                return track(feature, "feature " + (i + 1), features);
            }
        }
        throw new InvalidInput("track", "", "a GeoJSON document with a LineString", source);
    }

    private static JsonNode geometry(JsonNode feature) {
        return feature.has("geometry") ? feature.path("geometry") : feature;
    }

    private Track track(JsonNode feature, String where, List<JsonNode> features) {
        JsonNode geometry = geometry(feature);
        boolean parted = geometry.path("type").asText().equals("MultiLineString");
        List<Fix> bare = new ArrayList<>();
        if (parted) {
            geometry.path("coordinates").forEach(part -> join(bare, line(part, where)));
        } else {
            bare.addAll(line(geometry.path("coordinates"), where));
        }
        JsonNode properties = feature.path("properties");
        List<Fix> fixes = new ArrayList<>();
        for (int i = 0; i < bare.size(); i++) {
            fixes.add(told(bare.get(i), properties, i, where));
        }
        boolean barometer = Gpx.BAROMETER.equals(properties.path("heights").asText());
        try {
            return new Track(
                    properties.path("name").asText(""),
                    fixes,
                    marks(features, fixes),
                    barometer ? HeightOrigin.BAROMETER : HeightOrigin.RECEIVER);
        } catch (InvalidInput refused) {
            throw refused.at(source);
        }
    }

    /** Joins a part that begins where the one before was cut at the antimeridian. */
    private static void join(List<Fix> fixes, List<Fix> part) {
        if (!fixes.isEmpty() && !part.isEmpty()) {
            double end = fixes.get(fixes.size() - 1).position().longitude_deg();
            double start = part.get(0).position().longitude_deg();
            if (Math.abs(end) == 180 && start == -end) {
                fixes.remove(fixes.size() - 1);
                fixes.addAll(part.subList(1, part.size()));
                return;
            }
        }
        fixes.addAll(part);
    }

    private List<Fix> line(JsonNode coordinates, String where) {
        List<Fix> fixes = new ArrayList<>();
        for (JsonNode position : coordinates) {
            String place = source + ", " + where + ", position " + (fixes.size() + 1);
            Optional<Length> height = position.size() > 2 && position.get(2).isNumber()
                    ? Optional.of(new Length(position.get(2).asDouble()))
                    : Optional.empty();
            fixes.add(Fix.of(position(position, place)).withElevation(height));
        }
        return fixes;
    }

    private static Position position(JsonNode position, String where) {
        if (!position.isArray()
                || position.size() < 2
                || !position.get(0).isNumber()
                || !position.get(1).isNumber()) {
            throw new InvalidInput("position", position.toString(), ORDER, where);
        }
        return Swapped.check(position.get(1).asDouble(), position.get(0).asDouble(), ORDER, where);
    }

    /** A fix with the time and the accuracy that stand in the line's lists. */
    private Fix told(Fix bare, JsonNode properties, int i, String where) {
        String place = source + ", " + where + ", position " + (i + 1);
        JsonNode time = properties.path("times").path(i);
        JsonNode radius = properties.path("accuracies").path(i);
        try {
            return new Fix(
                    bare.position(),
                    time.isTextual() ? Optional.of(Instant.parse(time.asText())) : Optional.empty(),
                    radius.isNumber() ? Optional.of(new Length(radius.asDouble())) : Optional.empty(),
                    bare.elevation());
        } catch (DateTimeParseException wrong) {
            throw new InvalidInput("time", time.asText(), "a time like 2026-05-12T18:00:00Z", place);
        } catch (InvalidInput refused) {
            throw refused.at(place);
        }
    }

    private List<TrackMark> marks(List<JsonNode> features, List<Fix> fixes) {
        MarkPlaces places = new MarkPlaces(fixes);
        List<TrackMark> marks = new ArrayList<>();
        for (int i = 0; i < features.size(); i++) {
            JsonNode properties = features.get(i).path("properties");
            String word = properties.path("mark").asText("");
            if (!word.isEmpty()
                    && geometry(features.get(i)).path("type").asText().equals("Point")) {
                String where = source + ", feature " + (i + 1);
                Position position = position(geometry(features.get(i)).path("coordinates"), where);
                Optional<Instant> time = Optional.of(properties.path("time").asText(""))
                        .filter(text -> !text.isEmpty())
                        .map(text -> instant(text, where));
                places.find(word, position, time, properties.path("note").asText(""))
                        .ifPresent(marks::add);
            }
        }
        return marks;
    }

    private static Instant instant(String text, String where) {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException wrong) {
            throw new InvalidInput("time", text, "a time like 2026-05-12T18:00:00Z", where);
        }
    }
}
