package org.hosewright.ground.walk;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;

/** The way with its distances, before its heights are known.
 *
 * @param places from start to end
 * @param along distance to each place
 * @param fixes index of the fix at each place, or of the last one before
 */
record Traced(List<Position> places, List<Known<Length>> along, List<Integer> fixes) {

    /** A track taken as it was drawn, straight from position to position. */
    static Traced asDrawn(Track track, LocalPlane plane) {
        List<Position> places = new ArrayList<>();
        List<Known<Length>> along = new ArrayList<>();
        List<Integer> fixes = new ArrayList<>();
        double at_m = 0;
        LocalPlane.Point before = plane.point(track.first().position());
        for (int i = 0; i < track.fixes().size(); i++) {
            Position place = track.fixes().get(i).position();
            LocalPlane.Point point = plane.point(place);
            at_m += before.distance_m(point);
            before = point;
            places.add(place);
            along.add(Known.of(new Length(at_m)));
            fixes.add(i);
        }
        return new Traced(places, along, fixes);
    }

    int size() {
        return places.size();
    }

    double along_m(int i) {
        return along.get(i).value().metres();
    }

    List<WayPoint> points(Heights heights) {
        List<WayPoint> points = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            points.add(new WayPoint(places.get(i), along.get(i), new Length(heights.height_m(i)), fixes.get(i)));
        }
        return points;
    }
}
