package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.quantity.Length;

/** Curves of needed pressure against length laid out on a sheet. */
final class CurvesDrawing {
    private static final double RADIUS_em = 0.33;

    private final ReachDrawing reach;
    private final Sheet sheet;
    private final Pen pen;
    private final Axes axes;
    private final CurveNames names;
    private final Plot plot;

    private CurvesDrawing(ReachDrawing reach, Sheet sheet) {
        this.reach = reach;
        this.sheet = sheet;
        double em = sheet.type();
        pen = new Pen(em);
        axes = new Axes(reach.units(), em);
        List<PressureAt> points = new ArrayList<>();
        if (reach.limits().isEmpty()) {
            reach.curves().forEach(curve -> points.addAll(curve.points()));
        }
        Span span = Span.of(points, List.of(), reach.limits());
        names = CurveNames.of(reach, sheet, axes.width(span));
        double left = axes.width(span) + Layout.GAP_em * em;
        double right = sheet.width() - Math.max(Layout.GAP_em * em, names.column());
        Box room = new Box(left, names.head(), right - left, Layout.FLAT_em * em);
        plot = Layout.plot(sheet, span, reach.length(), room);
    }

    static Drawing of(ReachDrawing reach, Sheet sheet) {
        CurvesDrawing drawing = new CurvesDrawing(reach, sheet);
        drawing.draw();
        return new Drawing(sheet.width(), sheet.height(), drawing.plot, drawing.pen.marks());
    }

    private void draw() {
        Limits.hatch(pen, plot, reach.limits());
        axes.pressures(pen, plot);
        Ground ground = new Ground(List.of(), plot, Layout.foot(sheet), pen.em());
        ground.fill(pen);
        Couplings.tick(pen, plot, ground, List.of(new HoseRun(reach.length(), reach.section(), "")));
        List<Curve> curves = new ArrayList<>();
        for (ReachCurve curve : reach.curves()) {
            curves.add(new Curve(plot, curve.points()));
        }
        for (int i = 0; i < curves.size(); i++) {
            line(curves.get(i), i == 0);
            stops(reach.curves().get(i), curves.get(i), ground);
        }
        axes.lengths(pen, plot, sheet.height() - Lettering.DESCENT * pen.em(), sheet);
        names.set(pen, plot, curves);
        Limits.name(pen, new Names(pen, new Box(plot.left(), 0, plot.right(), plot.bottom())), plot, reach.limits());
    }

    private void line(Curve curve, boolean main) {
        if (main && curve.hasBand()) {
            pen.area(Role.BAND, curve.band());
        }
        List<Point> line = curve.line();
        if (line.size() > 1) {
            pen.strokeKeptClear(main ? Role.PRESSURE : Role.CURVE, line);
        }
    }

    private void stops(ReachCurve stops, Curve curve, Ground ground) {
        double radius = RADIUS_em * pen.em();
        stops.longest()
                .filter(this::isDrawn)
                .ifPresent(length -> pen.dot(Role.LONGEST, curve.at(length), radius, Shape.CIRCLE));
        stops.longestSafe().filter(this::isDrawn).ifPresent(length -> {
            Point at = curve.at(length);
            pen.stroke(Role.LEAD, List.of(at, ground.at(length.metres())));
            pen.dot(Role.SAFE, at, radius, Shape.SQUARE);
        });
    }

    private boolean isDrawn(Length length) {
        return length.metres() > 0 && length.metres() <= plot.length().metres() * (1 + 1e-9);
    }
}
