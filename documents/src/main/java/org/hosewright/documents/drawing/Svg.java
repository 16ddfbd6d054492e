package org.hosewright.documents.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Typeface;
import org.hosewright.documents.press.Typesetting;
import org.hosewright.hydraulics.quantity.Numbers;

/** A drawing under way, in points, x to the right and y downward. */
final class Svg {
    private static final String[] SEGMENTS = {"M", "L", "Q", "C", "Z"};
    private static final int[] COORDINATES = {2, 2, 4, 6, 0};
    private static final int DECIMALS = 2;

    /** Words keep clear of the lines they stand on. */
    private static final String HALO = "#ffffff";

    private static final double HALO_SHARE = 0.35;

    private final double width;
    private final double height;
    private final StringBuilder marks = new StringBuilder();

    Svg(double width, double height) {
        this.width = width;
        this.height = height;
    }

    void stroke(Path2D path, Pen pen) {
        String dash = pen.dash().isEmpty() ? "" : " stroke-dasharray=\"" + pen.dash() + "\"";
        marks.append("<path fill=\"none\" stroke-linecap=\"butt\" stroke-linejoin=\"round\" stroke=\"")
                .append(pen.colour())
                .append("\" stroke-width=\"")
                .append(number(pen.width()))
                .append('"')
                .append(dash)
                .append(" d=\"")
                .append(data(path))
                .append("\"/>");
    }

    void line(double x1, double y1, double x2, double y2, Pen pen) {
        Path2D path = new Path2D.Double();
        path.moveTo(x1, y1);
        path.lineTo(x2, y2);
        stroke(path, pen);
    }

    void fill(Path2D path, String colour) {
        marks.append("<path fill=\"")
                .append(colour)
                .append("\" d=\"")
                .append(data(path))
                .append("\"/>");
    }

    /** Words as outlines.
     *
     * @param share where the place stands in their width: 0 at their start, 0.5 in the middle, 1 at their end
     */
    void words(String words, Point2D at, double share, Lettering lettering) {
        Typeface face = lettering.bold() ? Typeface.BOLD : Typeface.REGULAR;
        double size = lettering.size();
        String set = Typesetting.set(words);
        AffineTransform place =
                AffineTransform.getTranslateInstance(at.getX() - share * face.width(set, size), at.getY());
        place.scale(1, -1);
        Path2D outline = face.outline(set, size);
        outline.transform(place);
        stroke(outline, new Pen(HALO, size * HALO_SHARE, ""));
        fill(outline, lettering.colour());
    }

    /** The drawing as a picture of a width on paper.
     *
     * @param says what it shows, for those who cannot see it
     */
    Html picture(String says, double widthMm) {
        String svg = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + number(width) + "\" height=\""
                + number(height) + "\" viewBox=\"0 0 " + number(width) + " " + number(height) + "\">" + marks
                + "</svg>";
        String data = Base64.getEncoder().encodeToString(svg.getBytes(StandardCharsets.UTF_8));
        return Html.picture("data:image/svg+xml;base64," + data, says)
                .with(
                        "style",
                        String.format(Locale.ROOT, "width:%.2fmm;height:%.2fmm", widthMm, widthMm * height / width));
    }

    private static String data(Path2D path) {
        StringBuilder data = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            int kind = i.currentSegment(at);
            data.append(SEGMENTS[kind]);
            for (int c = 0; c < COORDINATES[kind]; c++) {
                data.append(c == 0 ? "" : " ").append(number(at[c]));
            }
        }
        return data.toString();
    }

    private static String number(double value) {
        return Numbers.fixed(value, DECIMALS);
    }
}
