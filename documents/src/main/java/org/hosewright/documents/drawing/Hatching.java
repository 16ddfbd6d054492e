package org.hosewright.documents.drawing;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Slanting lines inside an outline: a limit, told by shape and not by colour. */
final class Hatching {
    /** A hatch line is this thin a sliver, so that the outline's own edge cuts it. */
    private static final double SLIVER = 0.35;

    private Hatching() {}

    /** The lines as thin filled slivers, cut at the outline. */
    static Path2D of(Path2D outline, double spacing) {
        Area inside = new Area(outline);
        Rectangle2D box = inside.getBounds2D();
        Path2D lines = new Path2D.Double();
        for (double x = box.getMinX() - box.getHeight(); x < box.getMaxX(); x += spacing) {
            lines.moveTo(x, box.getMaxY());
            lines.lineTo(x + box.getHeight(), box.getMinY());
            lines.lineTo(x + box.getHeight() + SLIVER, box.getMinY());
            lines.lineTo(x + SLIVER, box.getMaxY());
            lines.closePath();
        }
        Area cut = new Area(lines);
        cut.intersect(inside);
        return new Path2D.Double(cut);
    }
}
