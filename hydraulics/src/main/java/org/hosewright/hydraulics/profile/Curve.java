package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** Pressures at distances as a line and a band, cut off at the top of the plot. */
final class Curve {
    private final Plot plot;
    private final List<PressureAt> points;

    Curve(Plot plot, List<PressureAt> points) {
        this.plot = plot;
        this.points = points;
    }

    /** The line. */
    List<Point> line() {
        List<Point> line = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point here = at(points.get(i), 0);
            if (i > 0) {
                addCut(line, at(points.get(i - 1), 0), here);
            }
            if (here.y() >= plot.top()) {
                line.add(here);
            }
        }
        return line;
    }

    boolean hasBand() {
        return points.stream().anyMatch(point -> point.half().pascals() > 0);
    }

    /** The band's outline: its upper edge forth, its lower edge back. */
    List<Point> band() {
        List<Point> outline = new ArrayList<>();
        for (PressureAt point : points) {
            outline.add(held(at(point, 1)));
        }
        for (int i = points.size() - 1; i >= 0; i--) {
            outline.add(held(at(points.get(i), -1)));
        }
        return outline;
    }

    /** The point of the line at a distance, straight between the points given. */
    Point at(Length length) {
        PressureAt before = points.get(0);
        for (PressureAt point : points) {
            double run = point.at().metres() - before.at().metres();
            if (point.at().metres() >= length.metres() && run > 0) {
                double share = (length.metres() - before.at().metres()) / run;
                double pressure_Pa = before.pressure().pascals()
                        + share
                                * (point.pressure().pascals()
                                        - before.pressure().pascals());
                return new Point(plot.x(length), plot.y(new Pressure(pressure_Pa)));
            }
            before = point;
        }
        return at(before, 0);
    }

    double lastPressure_Pa() {
        return points.get(points.size() - 1).pressure().pascals();
    }

    /** Where the last pressure stands, above the plot as it may be. */
    Point end() {
        return at(points.get(points.size() - 1), 0);
    }

    private Point at(PressureAt point, double halves) {
        double pressure_Pa = point.pressure().pascals() + halves * point.half().pascals();
        return new Point(plot.x(point.at()), plot.y(new Pressure(pressure_Pa)));
    }

    private Point held(Point point) {
        return new Point(point.x(), Math.max(plot.top(), point.y()));
    }

    /** Where the line leaves the plot or comes back into it. */
    private void addCut(List<Point> line, Point from, Point to) {
        boolean leaves = from.y() >= plot.top() != to.y() >= plot.top();
        if (leaves) {
            double share = (plot.top() - from.y()) / (to.y() - from.y());
            line.add(new Point(from.x() + share * (to.x() - from.x()), plot.top()));
        }
    }
}
