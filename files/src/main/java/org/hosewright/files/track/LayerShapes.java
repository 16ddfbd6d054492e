package org.hosewright.files.track;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.hosewright.ground.track.Position;
import org.hosewright.ledger.walk.MapShape;

/** The shapes of a checked layer; of an area its outline alone. */
final class LayerShapes {
    private final List<MapShape> shapes = new ArrayList<>();

    private LayerShapes() {}

    static List<MapShape> of(String text) {
        LayerShapes found = new LayerShapes();
        JsonNode document = GeoJsonText.parse(text.getBytes(StandardCharsets.UTF_8), "layer");
        document.path("features").forEach(feature -> found.add(feature.path("geometry")));
        return List.copyOf(found.shapes);
    }

    private void add(JsonNode geometry) {
        JsonNode coordinates = geometry.path("coordinates");
        switch (geometry.path("type").asText()) {
            case "Point" -> shapes.add(new MapShape(MapShape.Kind.POINT, List.of(place(coordinates))));
            case "MultiPoint" ->
                coordinates.forEach(one -> shapes.add(new MapShape(MapShape.Kind.POINT, List.of(place(one)))));
            case "LineString" -> shapes.add(new MapShape(MapShape.Kind.LINE, places(coordinates)));
            case "MultiLineString" ->
                coordinates.forEach(one -> shapes.add(new MapShape(MapShape.Kind.LINE, places(one))));
            case "Polygon" -> shapes.add(new MapShape(MapShape.Kind.AREA, places(coordinates.path(0))));
            case "MultiPolygon" ->
                coordinates.forEach(one -> shapes.add(new MapShape(MapShape.Kind.AREA, places(one.path(0)))));
            default -> {
                // No other geometry has coordinates.
            }
        }
    }

    private static List<Position> places(JsonNode line) {
        List<Position> places = new ArrayList<>();
        line.forEach(place -> places.add(place(place)));
        return places;
    }

    private static Position place(JsonNode place) {
        return new Position(place.path(1).asDouble(), place.path(0).asDouble());
    }
}
