package org.hosewright.files.track;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.files.json.JsonObject;
import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.walk.MapShape;

/** A layer of the company's own map as the record keeps it: who made the data, and the data.
 *
 * @param attribution as the data's licence wants it named; shown on every view and print; not blank
 * @param geojson a feature collection (RFC 7946), as it was given
 */
public record MapLayer(String attribution, String geojson) {
    private static final Set<String> KEYS = Set.of("format", "attribution", "geojson");
    private static final int FORMAT = 1;

    public MapLayer {
        if (attribution.isBlank()) {
            throw new InvalidInput(
                    "attribution", attribution, "who made the map data, as its licence wants it named", "");
        }
        LayerFile.check(geojson, "layer");
    }

    /** The layer that a text of the record holds. */
    public static MapLayer read(String text) {
        JsonObject json = JsonObject.of(text, "layer").only(KEYS).edition(FORMAT);
        return new MapLayer(json.text("attribution"), json.text("geojson"));
    }

    /** A place on it; empty where it has no feature. */
    public Optional<Position> findPlace() {
        return LayerFile.findPlace(geojson);
    }

    /** What is on it. */
    public List<MapShape> listShapes() {
        return LayerShapes.of(geojson);
    }

    /** Its text: canonical JSON (RFC 8785). */
    public String write() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        tree.put("attribution", attribution);
        tree.put("geojson", geojson);
        return CanonicalJson.text(tree);
    }
}
