package org.hosewright.hydraulics.profile;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A line profile laid out on a sheet. */
final class ProfileDrawing {
    private static final double END_RADIUS_em = 0.3;

    private final LineProfile profile;
    private final Sheet sheet;
    private final Pen pen;
    private final Axes axes;
    private final Layout layout;
    private final Plot plot;

    private ProfileDrawing(LineProfile profile, Sheet sheet) {
        this.profile = profile;
        this.sheet = sheet;
        double em = sheet.type();
        pen = new Pen(em);
        axes = new Axes(profile.units(), em);
        List<AnswerBlock> ends = List.of(new AnswerBlock(profile.pump(), em), new AnswerBlock(profile.tip(), em));
        Span span = Span.of(profile.pressure(), profile.pins(), profile.limits());
        layout = Layout.of(sheet, span, profile.length(), axes.width(span), ends);
        plot = layout.plot();
    }

    static Drawing of(LineProfile profile, Sheet sheet) {
        checkInside(profile);
        ProfileDrawing drawing = new ProfileDrawing(profile, sheet);
        drawing.draw();
        return new Drawing(sheet.width(), sheet.height(), drawing.plot, drawing.pen.marks());
    }

    private void draw() {
        Ground ground = new Ground(profile.ground(), plot, layout.groundBottom(), pen.em());
        Limits.hatch(pen, plot, profile.limits());
        axes.pressures(pen, plot);
        ground.fill(pen);
        Couplings.tick(pen, plot, ground, profile.hose());
        line(ground);
        Pins.stick(pen, plot, profile.pins());
        axes.lengths(pen, plot, sheet.height() - Lettering.DESCENT * pen.em(), sheet);
        answers();
        double width = plot.right() - plot.left();
        Names names = new Names(pen, new Box(plot.left(), plot.top(), width, layout.groundBottom() - plot.top()));
        Limits.name(pen, names, plot, profile.limits());
        Pins.name(names, plot, profile.pins());
        Couplings.name(pen, names, plot, ground, profile.hose());
    }

    private void line(Ground ground) {
        Curve curve = new Curve(plot, profile.pressure());
        if (curve.hasBand()) {
            pen.area(Role.BAND, curve.band());
        }
        List<Point> line = curve.line();
        Point first = line.get(0);
        Point second = line.get(1);
        boolean piping = first.x() == second.x();
        if (piping) {
            pen.stroke(Role.PIPING, List.of(first, second));
        }
        pen.strokeKeptClear(Role.PRESSURE, line.subList(piping && line.size() > 2 ? 1 : 0, line.size()));
        Point end = line.get(line.size() - 1);
        Point below = ground.at(profile.length().metres());
        pen.stroke(Role.LEAD, List.of(end, below));
        double radius = END_RADIUS_em * pen.em();
        pen.dot(Role.PRESSURE, first, radius, Shape.DISC);
        pen.dot(Role.TIP, end, radius, Shape.DISC);
    }

    private void answers() {
        List<PressureAt> line = profile.pressure();
        AnswerBlock pump = layout.pump();
        AnswerBlock tip = layout.tip();
        double pumpY = layout.stacked() ? pump.above() : beside(pump, line.get(0));
        double tipY = layout.stacked() ? tip.above() : beside(tip, line.get(line.size() - 1));
        pump.set(pen, 0, pumpY, Anchor.START);
        double tipX = layout.stacked() ? sheet.width() : plot.right() + Layout.GAP_em * pen.em();
        tip.set(pen, tipX, tipY, layout.stacked() ? Anchor.END : Anchor.START);
    }

    /** The baseline of an answer that stands level with its end of the line, held to the sheet. */
    private double beside(AnswerBlock block, PressureAt end) {
        double level = plot.y(end.pressure()) + Lettering.ASCENT * Pen.LARGE_em * pen.em() / 2;
        double lowest = layout.groundBottom() - block.below();
        return Math.max(block.above(), Math.min(lowest, level));
    }

    private static void checkInside(LineProfile profile) {
        double most_m = profile.length().metres() * (1 + 1e-9);
        for (PressureAt point : profile.pressure()) {
            check("pressure along the line", point.at(), most_m);
        }
        for (Pin pin : profile.pins()) {
            check("reading " + pin.label(), pin.at(), most_m);
        }
    }

    private static void check(String what, Length at, double most_m) {
        if (at.metres() > most_m) {
            throw new InvalidInput(
                    "distance of " + what,
                    Numbers.plain(at.metres()) + " m",
                    "at most the line's length, " + Numbers.plain(most_m) + " m",
                    "");
        }
    }
}
