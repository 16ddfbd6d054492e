package org.hosewright.documents.drawing;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hosewright.documents.press.Html;
import org.hosewright.hydraulics.profile.Anchor;
import org.hosewright.hydraulics.profile.Drawing;
import org.hosewright.hydraulics.profile.Mark;
import org.hosewright.hydraulics.profile.Point;
import org.hosewright.hydraulics.profile.Role;
import org.hosewright.hydraulics.profile.Shape;

/** Strokes a drawing whose geometry was worked out elsewhere, in millimetres.
 *
 * <p>The answers at its ends stand over it as text, so that they can be read out, searched and copied; its smaller words
 * are part of the picture, which is told in words as a whole.
 */
public final class Stroking {
    private static final double HATCH_MM = 1.6;

    /** From the top of a line set without leading down to its baseline, in sizes of the type. */
    private static final double BASELINE = 0.846;

    private final Drawing drawing;
    private final Svg svg;
    private final List<Html> answers = new ArrayList<>();

    private Stroking(Drawing drawing) {
        this.drawing = drawing;
        this.svg = new Svg(drawing.width(), drawing.height());
    }

    /** The drawing on paper.
     *
     * @param says what it shows, for those who cannot see it
     */
    public static Html of(Drawing drawing, String says) {
        return new Stroking(drawing).html(says);
    }

    private Html html(String says) {
        drawing.marks().forEach(this::mark);
        return Html.tag("div", Html.all(answers), svg.picture(says, drawing.width()))
                .in("drawing")
                .with("style", String.format(Locale.ROOT, "height:%.2fmm", drawing.height()));
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            svg.stroke(path(stroke.points()), RolePen.of(stroke.role()));
        } else if (mark instanceof Mark.Area area) {
            area(area);
        } else if (mark instanceof Mark.Dot dot) {
            dot(dot);
        } else if (mark instanceof Mark.Text text) {
            text(text);
        }
    }

    private void area(Mark.Area area) {
        Path2D path = path(area.points());
        path.closePath();
        if (area.role() == Role.LIMIT) {
            svg.fill(Hatching.of(path, HATCH_MM), RolePen.words(Role.AXIS));
        } else {
            svg.fill(path, RolePen.fill(area.role()));
        }
    }

    private void dot(Mark.Dot dot) {
        Path2D shape = shape(dot);
        boolean open = dot.shape() == Shape.CIRCLE;
        svg.fill(shape, open ? "#ffffff" : RolePen.of(dot.role()).colour());
        svg.stroke(shape, RolePen.of(dot.role()));
    }

    private static Path2D shape(Mark.Dot dot) {
        double r = dot.radius();
        if (dot.shape() == Shape.DIAMOND) {
            double corner = 1.4 * r;
            Path2D diamond = path(List.of(
                    new Point(dot.x(), dot.y() - corner),
                    new Point(dot.x() + corner, dot.y()),
                    new Point(dot.x(), dot.y() + corner),
                    new Point(dot.x() - corner, dot.y())));
            diamond.closePath();
            return diamond;
        }
        double left = dot.x() - r;
        double top = dot.y() - r;
        return dot.shape() == Shape.SQUARE
                ? new Path2D.Double(new Rectangle2D.Double(left, top, 2 * r, 2 * r))
                : new Path2D.Double(new Ellipse2D.Double(left, top, 2 * r, 2 * r));
    }

    private void text(Mark.Text text) {
        double share = text.anchor() == Anchor.START ? 0 : text.anchor() == Anchor.MIDDLE ? 0.5 : 1;
        if (text.role() != Role.ANSWER && text.role() != Role.BESIDE) {
            svg.words(
                    text.text(),
                    new Point2D.Double(text.x(), text.y()),
                    share,
                    new Lettering(text.size(), RolePen.words(text.role()), RolePen.bold(text.role())));
            return;
        }
        answers.add(Html.tag("div", text.text())
                .in(text.role().word())
                .with("style", share == 1 ? place(text, 0, drawing.width() - text.x()) : place(text, text.x(), 0)));
    }

    /** A line of text that takes no room: what follows it begins where it began. */
    private static String place(Mark.Text text, double left, double right) {
        double top = text.y() - BASELINE * text.size();
        return String.format(
                Locale.ROOT,
                "margin:%.2fmm %.2fmm %.2fmm %.2fmm;height:%.2fmm;font-size:%.2fmm;text-align:%s",
                top,
                right,
                -top - text.size(),
                left,
                text.size(),
                text.size(),
                right > 0 ? "right" : "left");
    }

    private static Path2D path(List<Point> points) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < points.size(); i++) {
            if (i == 0) {
                path.moveTo(points.get(i).x(), points.get(i).y());
            } else {
                path.lineTo(points.get(i).x(), points.get(i).y());
            }
        }
        return path;
    }
}
