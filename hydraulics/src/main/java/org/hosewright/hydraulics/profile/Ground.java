package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hosewright.hydraulics.quantity.Length;

/** The ground under a line as a filled contour, its height drawn large enough to see. */
final class Ground {
    /** Heights that differ by less are drawn as if they differed by this much: a slope is not made of nothing [m]. */
    private static final double LEAST_SPAN_m = 6;

    /** Above the ground for the couplings, and below it for the earth [em]. */
    private static final double AIR_em = 1.1;

    private static final double EARTH_em = 0.7;

    /** The last digits of two sums of lengths [1]. */
    private static final double ROUNDING = 1e-9;

    private final List<GroundAt> points;
    private final Plot plot;
    private final double bottom;
    private final double em;
    private final double lowest_m;
    private final double span_m;

    /** The ground below a plot.
     *
     * @param bottom of its strip, which begins a little below the plot
     */
    Ground(List<GroundAt> given, Plot plot, double bottom, double em) {
        this.plot = plot;
        this.bottom = bottom;
        this.em = em;
        List<GroundAt> sorted = new ArrayList<>(given);
        sorted.sort(Comparator.comparingDouble(point -> point.at().metres()));
        if (sorted.isEmpty()) {
            sorted.add(new GroundAt(new Length(0), new Length(0)));
        }
        points = sorted;
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (GroundAt point : points) {
            low = Math.min(low, point.height().metres());
            high = Math.max(high, point.height().metres());
        }
        lowest_m = low;
        span_m = Math.max(LEAST_SPAN_m, high - low);
    }

    /** The height at a distance, straight between the points and level beyond them; behind the step where it steps [m]. */
    double height_m(double at_m) {
        GroundAt before = points.get(0);
        for (GroundAt point : points) {
            if (point.at().metres() > at_m) {
                double run = point.at().metres() - before.at().metres();
                double share = run > 0 ? Math.max(0, at_m - before.at().metres()) / run : 1;
                double rise = point.height().metres() - before.height().metres();
                return before.height().metres() + share * rise;
            }
            before = point;
        }
        return before.height().metres();
    }

    Point at(double at_m) {
        return place(at_m, height_m(at_m));
    }

    private Point place(double at_m, double height_m) {
        double lowest = bottom - EARTH_em * em;
        double highest = Math.min(lowest, plot.bottom() + (Layout.GAP_em + AIR_em) * em);
        double y = lowest - (lowest - highest) * (height_m - lowest_m) / span_m;
        return new Point(plot.x(new Length(at_m)), y);
    }

    /** Two points at one distance are a wall. */
    void fill(Pen pen) {
        double end_m = plot.length().metres();
        double most_m = end_m * (1 + ROUNDING);
        List<Point> outline = new ArrayList<>();
        if (points.get(0).at().metres() > 0) {
            outline.add(at(0));
        }
        for (GroundAt point : points) {
            if (point.at().metres() <= most_m) {
                outline.add(place(point.at().metres(), point.height().metres()));
            }
        }
        if (Math.abs(points.get(points.size() - 1).at().metres() - end_m) > ROUNDING * end_m) {
            outline.add(at(end_m));
        }
        outline.add(new Point(plot.right(), bottom));
        outline.add(new Point(plot.left(), bottom));
        pen.area(Role.GROUND, outline);
    }
}
