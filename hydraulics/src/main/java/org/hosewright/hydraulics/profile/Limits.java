package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hosewright.hydraulics.quantity.Length;

/** Limits as hatched strips with their edge and their name. */
final class Limits {
    private static final double ABOVE_em = 0.35;
    private static final double BELOW_em = 1.05;
    private static final double INSET_em = 0.4;
    private static final double STEP_em = 0.5;

    private Limits() {}

    /** Hatches and edges; the names come later, above everything. */
    static void hatch(Pen pen, Plot plot, List<LimitBand> limits) {
        for (LimitBand limit : limits) {
            double left = left(plot, limit);
            double right = right(plot, limit);
            double y = plot.y(limit.pressure());
            if (right > left) {
                double top = Math.max(plot.top(), y - Layout.HATCH_em * pen.em());
                pen.area(
                        Role.LIMIT,
                        List.of(new Point(left, top), new Point(right, top), new Point(right, y), new Point(left, y)));
                pen.stroke(Role.LIMIT, left, y, right, y);
            }
        }
    }

    /** Names above the edges, the highest first. */
    static void name(Pen pen, Names names, Plot plot, List<LimitBand> limits) {
        List<LimitBand> highestFirst = new ArrayList<>(limits);
        highestFirst.sort(
                Comparator.comparingDouble((LimitBand limit) -> limit.pressure().pascals())
                        .reversed());
        for (LimitBand limit : highestFirst) {
            if (right(plot, limit) > left(plot, limit)) {
                names.atFirst(places(pen, plot, limit));
            }
        }
    }

    private static List<Mark.Text> places(Pen pen, Plot plot, LimitBand limit) {
        double em = pen.em();
        double y = plot.y(limit.pressure());
        double left = left(plot, limit) + INSET_em * em;
        double right = right(plot, limit) - INSET_em * em;
        List<Mark.Text> places = new ArrayList<>();
        for (double off = 0; off < plot.bottom() - plot.top(); off += STEP_em * em) {
            for (double base : new double[] {y - ABOVE_em * em - off, y + BELOW_em * em + off}) {
                places.add(pen.small(Role.LIMIT, right, base, Anchor.END, limit.label()));
                places.add(pen.small(Role.LIMIT, left, base, Anchor.START, limit.label()));
            }
        }
        return places;
    }

    private static double left(Plot plot, LimitBand limit) {
        return plot.x(limit.from());
    }

    private static double right(Plot plot, LimitBand limit) {
        return plot.x(new Length(Math.min(limit.to().metres(), plot.length().metres())));
    }
}
