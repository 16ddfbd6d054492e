package org.hosewright.files.track;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.Position;

/** A line cut where it crosses the antimeridian, so that no part of it does.
 *
 * @param parts from start to end; the cut ends lie at 180 and -180 degrees
 * @source RFC 7946, section 3.1.9
 */
record AntimeridianCut(List<List<Object>> parts) {

    static AntimeridianCut of(List<Fix> fixes) {
        List<List<Object>> parts = new ArrayList<>();
        List<Object> part = new ArrayList<>();
        parts.add(part);
        for (int i = 0; i < fixes.size(); i++) {
            if (i > 0 && crosses(fixes.get(i - 1), fixes.get(i))) {
                Position from = fixes.get(i - 1).position();
                Position to = fixes.get(i).position();
                double side = from.longitude_deg() > 0 ? 180 : -180;
                double toEdge = side - from.longitude_deg();
                double share = toEdge / (to.longitude_deg() + 2 * side - from.longitude_deg());
                double latitude = from.latitude_deg() + share * (to.latitude_deg() - from.latitude_deg());
                part.add(GeoJsonWriter.coordinates(Fix.of(new Position(latitude, side))));
                part = new ArrayList<>();
                parts.add(part);
                part.add(GeoJsonWriter.coordinates(Fix.of(new Position(latitude, -side))));
            }
            part.add(GeoJsonWriter.coordinates(fixes.get(i)));
        }
        return new AntimeridianCut(parts);
    }

    private static boolean crosses(Fix from, Fix to) {
        return Math.abs(from.position().longitude_deg() - to.position().longitude_deg()) > 180;
    }

    Map<String, Object> geometry() {
        boolean whole = parts.size() == 1;
        Map<String, Object> geometry = new LinkedHashMap<>();
        geometry.put("type", whole ? "LineString" : "MultiLineString");
        geometry.put("coordinates", whole ? parts.get(0) : parts);
        return geometry;
    }
}
