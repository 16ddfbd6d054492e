package org.hosewright.documents.drawing;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.hosewright.ground.track.Position;

/** The piece of ground that a map shows, north up, in millimetres of the paper.
 *
 * @validFor a few kilometres: degrees are taken as even on the way across
 */
final class MapFrame {
    /** Nothing smaller than this is shown larger [m]. */
    private static final double LEAST_m = 40;

    /** Of the frame on each side, around the way [1]. */
    private static final double MARGIN = 0.1;

    private static final double METRES_PER_DEGREE = 111_195;

    private final Rectangle2D frame;
    private final Position origin;
    private final double shrink;
    private final double mmPerMetre;
    private final double midEast_m;
    private final double midNorth_m;

    MapFrame(List<Position> way, double width, double height) {
        frame = new Rectangle2D.Double(0, 0, width, height);
        origin = way.get(0);
        shrink = Math.cos(Math.toRadians(origin.latitude_deg()));
        double[] east = span(way.stream().map(this::east_m));
        double[] north = span(way.stream().map(this::north_m));
        midEast_m = (east[0] + east[1]) / 2;
        midNorth_m = (north[0] + north[1]) / 2;
        double across = Math.max(LEAST_m, east[1] - east[0]);
        double up = Math.max(LEAST_m, north[1] - north[0]);
        mmPerMetre = (1 - 2 * MARGIN) * Math.min(width / across, height / up);
    }

    private static double[] span(Stream<Double> values) {
        double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        values.forEach(value -> {
            span[0] = Math.min(span[0], value);
            span[1] = Math.max(span[1], value);
        });
        return span;
    }

    private double east_m(Position place) {
        double turned = Math.IEEEremainder(place.longitude_deg() - origin.longitude_deg(), 360);
        return turned * shrink * METRES_PER_DEGREE;
    }

    private double north_m(Position place) {
        return (place.latitude_deg() - origin.latitude_deg()) * METRES_PER_DEGREE;
    }

    double mm(double metres) {
        return metres * mmPerMetre;
    }

    Point2D point(Position place) {
        return new Point2D.Double(
                frame.getCenterX() + mm(east_m(place) - midEast_m),
                frame.getCenterY() - mm(north_m(place) - midNorth_m));
    }

    boolean holds(Point2D point) {
        return frame.contains(point);
    }

    /** As much of a course as lies within the frame. */
    Path2D course(List<Position> places) {
        Path2D path = new Path2D.Double();
        for (int i = 1; i < places.size(); i++) {
            leg(path, point(places.get(i - 1)), point(places.get(i)));
        }
        return path;
    }

    /** As much of an area as lies within the frame. */
    Path2D area(List<Position> outline) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < outline.size(); i++) {
            Point2D corner = point(outline.get(i));
            if (i == 0) {
                path.moveTo(corner.getX(), corner.getY());
            } else {
                path.lineTo(corner.getX(), corner.getY());
            }
        }
        if (outline.isEmpty() || !path.intersects(frame)) {
            return new Path2D.Double();
        }
        path.closePath();
        Area clipped = new Area(path);
        clipped.intersect(new Area(frame));
        return new Path2D.Double(clipped);
    }

    /** Clips a leg by Liang and Barsky's way. */
    private void leg(Path2D path, Point2D from, Point2D to) {
        double[] runs = {to.getX() - from.getX(), to.getY() - from.getY()};
        double[] starts = {from.getX(), from.getY()};
        double[] ends = {frame.getWidth(), frame.getHeight()};
        double enter = 0;
        double leave = 1;
        for (int axis = 0; axis < 2; axis++) {
            double low = -starts[axis] / runs[axis];
            double high = (ends[axis] - starts[axis]) / runs[axis];
            if (runs[axis] != 0) {
                enter = Math.max(enter, Math.min(low, high));
                leave = Math.min(leave, Math.max(low, high));
            } else if (starts[axis] < 0 || starts[axis] > ends[axis]) {
                return;
            }
        }
        if (enter < leave) {
            path.moveTo(starts[0] + enter * runs[0], starts[1] + enter * runs[1]);
            path.lineTo(starts[0] + leave * runs[0], starts[1] + leave * runs[1]);
        }
    }
}
