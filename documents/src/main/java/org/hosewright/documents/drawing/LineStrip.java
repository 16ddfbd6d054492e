package org.hosewright.documents.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.hosewright.documents.press.Html;

/** A line of hose drawn along a card: the pump at the left, a tick at each coupling, a wall where it must stop.
 *
 * @param columns boxes of the card above it, all of one width
 * @param sectionsBetween whole sections from one column to the next
 * @param starts true where the pump stands at its left end
 * @param stops true where it must end at the last column
 */
public record LineStrip(int columns, int sectionsBetween, boolean starts, boolean stops) {
    private static final double COLUMN = 60;
    private static final double HEIGHT = 15;
    private static final double HOSE_Y = 6;
    private static final double HOSE = 2.6;
    private static final double PUMP = 9;
    private static final double WALL = 13;

    /** The drawing.
     *
     * @param says what it shows, for those who cannot see it
     */
    public Html picture(String says, double widthMm) {
        double width = COLUMN * columns;
        Svg svg = new Svg(width, HEIGHT);
        double end = stops ? width - COLUMN / 2 + WALL / 2 : width;
        if (starts) {
            pump(svg);
        }
        svg.line(starts ? PUMP : 0, HOSE_Y, end, HOSE_Y, Pen.ink(HOSE));
        for (int column = 0; column < columns; column++) {
            ticks(svg, column);
        }
        if (stops) {
            wall(svg, end);
        }
        return svg.picture(says, widthMm);
    }

    private void ticks(Svg svg, int column) {
        double at = COLUMN * (column + 0.5);
        svg.line(at, HOSE_Y, at, HEIGHT, Pen.ink(1.4));
        for (int section = 1; section < sectionsBetween && column > 0; section++) {
            double between = at - COLUMN * section / sectionsBetween;
            svg.line(between, HOSE_Y, between, HOSE_Y + 5, Pen.ink(0.7));
        }
    }

    private static void pump(Svg svg) {
        svg.fill(box(0, HOSE_Y - PUMP / 2, PUMP, PUMP), Pen.INK);
        double cut = COLUMN / 4;
        svg.line(PUMP, HOSE_Y, cut, HOSE_Y, Pen.ink(HOSE));
        for (int i = 0; i < 2; i++) {
            double x = PUMP + 2.5 + 3 * i;
            svg.line(x - 1.5, HOSE_Y + 4, x + 1.5, HOSE_Y - 4, new Pen("#ffffff", 1.6, ""));
        }
    }

    private static void wall(Svg svg, double x) {
        Path2D wall = box(x, 0, WALL, HOSE_Y * 2);
        svg.fill(Hatching.of(wall, 3), Pen.INK);
        svg.line(x, 0, x, HOSE_Y * 2, Pen.ink(1.8));
    }

    private static Path2D box(double x, double y, double width, double height) {
        return new Path2D.Double(new Rectangle2D.Double(x, y, width, height));
    }
}
