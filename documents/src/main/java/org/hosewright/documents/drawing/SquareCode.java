package org.hosewright.documents.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.documents.stamp.Squares;

/** The square code of one piece that is cut out, so that it can be read back wherever it hangs. */
public final class SquareCode {
    /** Side on paper [mm]: a third of a millimetre a square, which a phone reads at a hand's length. */
    public static final double SIDE_MM = 12.5;

    private static final double UNIT = 10;

    private SquareCode() {}

    /** The drawing. */
    public static Html picture(SheetCode code) {
        Squares squares = Squares.of(code.text());
        double side = squares.side() * UNIT;
        Svg svg = new Svg(side, side);
        svg.fill(box(0, 0, side), "#ffffff");
        Path2D dark = new Path2D.Double();
        for (int row = 0; row < squares.side(); row++) {
            row(squares, row, dark);
        }
        svg.fill(dark, Pen.INK);
        return svg.picture(code.says(), SIDE_MM);
    }

    /** Dark squares side by side are one bar: no light seam between them. */
    private static void row(Squares squares, int row, Path2D dark) {
        int from = 0;
        while (from < squares.side()) {
            int to = from;
            while (to < squares.side() && squares.isDark(to, row)) {
                to++;
            }
            if (to > from) {
                dark.append(new Rectangle2D.Double(from * UNIT, row * UNIT, (to - from) * UNIT, UNIT), false);
            }
            from = to + 1;
        }
    }

    private static Path2D box(double x, double y, double side) {
        return new Path2D.Double(new Rectangle2D.Double(x, y, side, side));
    }
}
