package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** Curves of needed pressure against length laid out on a sheet. */
final class CurvesDrawing {
    private static final double RADIUS_em = 0.33;

    private final ReachDrawing reach;
    private final Sheet sheet;
    private final Pen pen;
    private final Axes axes;
    private final Layout layout;
    private final Plot plot;

    private CurvesDrawing(ReachDrawing reach, Sheet sheet) {
        this.reach = reach;
        this.sheet = sheet;
        pen = new Pen(sheet.type());
        axes = new Axes(reach.units(), sheet.type());
        List<PressureAt> points = new ArrayList<>();
        if (reach.limits().isEmpty()) {
            reach.curves().forEach(curve -> points.addAll(curve.points()));
        }
        Span span = Span.of(points, List.of(), reach.limits());
        AnswerBlock none = new AnswerBlock(Answer.NONE, sheet.type());
        layout = Layout.of(sheet, span, reach.length(), axes.width(span), none, none);
        plot = layout.plot();
    }

    static Drawing of(ReachDrawing reach, Sheet sheet) {
        CurvesDrawing drawing = new CurvesDrawing(reach, sheet);
        drawing.draw();
        return new Drawing(sheet.width(), sheet.height(), drawing.plot, drawing.pen.marks());
    }

    private void draw() {
        Limits.hatch(pen, plot, reach.limits());
        axes.pressures(pen, plot);
        Ground ground = new Ground(List.of(), layout, pen.em());
        ground.fill(pen);
        Couplings.tick(pen, plot, ground, List.of(new HoseRun(reach.length(), reach.section(), "")));
        for (int i = 0; i < reach.curves().size(); i++) {
            curve(i);
        }
        axes.lengths(pen, plot, sheet.height() - Lettering.DESCENT * pen.em(), sheet);
        for (ReachCurve curve : reach.curves()) {
            stops(curve, ground);
        }
        Names names = new Names(pen, new Box(0, 0, sheet.width(), layout.groundTop()));
        Limits.name(pen, names, plot, reach.limits());
        reach.curves().forEach(curve -> names(curve, names));
    }

    private void curve(int index) {
        Curve curve = new Curve(plot, reach.curves().get(index).points());
        if (index == 0 && curve.hasBand()) {
            pen.area(Role.BAND, curve.band());
        }
        List<Point> line = curve.line();
        if (line.size() > 1) {
            pen.strokeKeptClear(index == 0 ? Role.PRESSURE : Role.CURVE, line);
        }
    }

    private void stops(ReachCurve reachCurve, Ground ground) {
        Curve curve = new Curve(plot, reachCurve.points());
        reachCurve
                .longest()
                .filter(this::isDrawn)
                .ifPresent(length -> pen.dot(Role.LONGEST, curve.at(length), RADIUS_em * pen.em(), Shape.CIRCLE));
        reachCurve.longestSafe().filter(this::isDrawn).ifPresent(length -> {
            Point at = curve.at(length);
            pen.dot(Role.SAFE, at, RADIUS_em * pen.em(), Shape.SQUARE);
            pen.stroke(Role.LEAD, List.of(at, ground.at(length.metres())));
        });
    }

    private void names(ReachCurve reachCurve, Names names) {
        Curve curve = new Curve(plot, reachCurve.points());
        List<Point> line = curve.line();
        if (!line.isEmpty()) {
            names.beside(Role.CURVE, line.get(line.size() - 1), reachCurve.label());
        }
        reachCurve
                .longestSafe()
                .filter(this::isDrawn)
                .ifPresent(length -> names.beside(
                        Role.SAFE,
                        curve.at(length),
                        "safe to " + QuantityShown.of(reach.units()).text(length)));
    }

    private boolean isDrawn(Length length) {
        return length.metres() > 0 && length.metres() <= plot.length().metres() * (1 + 1e-9);
    }
}
