package org.hosewright.documents.drawing;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.hosewright.documents.press.Html;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.walk.SectionMark;
import org.hosewright.ground.walk.Walk;
import org.hosewright.ground.walk.WalkedMark;
import org.hosewright.ground.walk.WayPoint;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.walk.MapShape;

/** A way on the company's own map: north up, the sections' ends numbered circles, what people marked a disc, the pump a
 * square. */
public final class MapPicture {
    private static final double RADIUS_mm = 1.2;
    private static final double TYPE_mm = 2.6;

    /** Sections whose ends lie nearer together than this are left out, but for the last [mm]. */
    private static final double APART_mm = 3.6;

    /** A bar of the scale is at most so much of the width [1]. */
    private static final double LONGEST_BAR = 0.3;

    private final Svg svg;
    private final MapFrame frame;
    private final double width;
    private final double height;

    private MapPicture(List<Position> way, double width, double height) {
        this.svg = new Svg(width, height);
        this.frame = new MapFrame(way, width, height);
        this.width = width;
        this.height = height;
    }

    /** The map.
     *
     * @param shapes of the company's layers, drawn below the way
     * @param units of its scale
     * @param size room on paper
     * @param says what it shows, for those who cannot see it
     */
    public static Html of(Walk walk, List<MapShape> shapes, UnitSystem units, Size size, String says) {
        List<Position> way = walk.way().stream().map(WayPoint::position).toList();
        MapPicture map = new MapPicture(way, size.width(), size.height());
        map.ground(shapes);
        map.svg.stroke(map.frame.course(way), Pen.ink(0.65));
        map.marks(walk);
        map.scale(units);
        map.border();
        return map.svg.picture(says, size.width());
    }

    /** Room on paper [mm]. */
    public record Size(double width, double height) {}

    private void ground(List<MapShape> shapes) {
        for (MapShape shape : shapes) {
            switch (shape.kind()) {
                case AREA -> {
                    Path2D area = frame.area(shape.places());
                    svg.fill(area, Pen.GROUND);
                    svg.stroke(area, Pen.pale(0.18));
                }
                case LINE -> svg.stroke(frame.course(shape.places()), new Pen(Pen.BAND, 1.4, ""));
                case POINT -> dot(frame.point(shape.places().get(0)), 0.8, "#ffffff", Pen.pale(0.3));
            }
        }
    }

    private void marks(Walk walk) {
        for (WalkedMark mark : walk.marks()) {
            dot(frame.point(mark.place().position()), 0.7, Pen.INK, Pen.ink(0.2));
        }
        Point2D last = frame.point(walk.way().get(0).position());
        double side = 1.6 * RADIUS_mm;
        svg.fill(
                new Path2D.Double(new Rectangle2D.Double(last.getX() - side / 2, last.getY() - side / 2, side, side)),
                Pen.INK);
        for (SectionMark mark : walk.sections()) {
            Point2D at = frame.point(mark.place().position());
            boolean end = mark.equals(walk.sections().get(walk.sections().size() - 1));
            if (end || at.distance(last) > APART_mm) {
                dot(at, RADIUS_mm, "#ffffff", Pen.ink(0.4));
                svg.words(
                        String.valueOf(mark.section()),
                        new Point2D.Double(at.getX(), at.getY() - 1.5 * RADIUS_mm),
                        0.5,
                        new Lettering(TYPE_mm, Pen.INK, true));
                last = at;
            }
        }
    }

    private void dot(Point2D at, double radius, String fill, Pen pen) {
        if (frame.holds(at)) {
            var ring = new Path2D.Double(
                    new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius));
            svg.fill(ring, fill);
            svg.stroke(ring, pen);
        }
    }

    /** A bar of a round length and an arrow to the north. */
    private void scale(UnitSystem units) {
        double unit_m = units == UnitSystem.US ? Length.ofFeet(1).metres() : 1;
        double bar = 1;
        for (double round : new double[] {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000}) {
            bar = frame.mm(round * unit_m) <= LONGEST_BAR * width ? round : bar;
        }
        double length = frame.mm(bar * unit_m);
        double y = height - 2;
        svg.line(2, y, 2 + length, y, Pen.ink(0.5));
        var lettering = new Lettering(TYPE_mm, Pen.INK, false);
        String says = QuantityShown.of(units).text(new Length(bar * unit_m));
        svg.words(says, new Point2D.Double(2 + length + 1, y + 0.8), 0, lettering);
        svg.line(width - 3, 8, width - 3, 3, Pen.ink(0.4));
        svg.line(width - 3, 3, width - 3.8, 4.6, Pen.ink(0.4));
        svg.line(width - 3, 3, width - 2.2, 4.6, Pen.ink(0.4));
        svg.words("N", new Point2D.Double(width - 3, 11), 0.5, lettering);
    }

    private void border() {
        svg.stroke(new Path2D.Double(new Rectangle2D.Double(0.3, 0.3, width - 0.6, height - 0.6)), Pen.ink(0.2));
    }
}
