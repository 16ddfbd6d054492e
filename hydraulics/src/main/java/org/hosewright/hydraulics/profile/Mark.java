package org.hosewright.hydraulics.profile;

import java.util.List;

/** One thing to be stroked, filled or set; in order, later ones above earlier ones. */
public sealed interface Mark {

    Role role();

    /** An open line through points. */
    record Stroke(Role role, List<Point> points) implements Mark {
        public Stroke {
            points = List.copyOf(points);
        }
    }

    /** A closed area, filled or hatched. */
    record Area(Role role, List<Point> points) implements Mark {
        public Area {
            points = List.copyOf(points);
        }
    }

    /** One line of text.
     *
     * @param x where its anchor stands
     * @param y its baseline
     * @param size of the type, in the drawing's unit
     */
    record Text(Role role, double x, double y, double size, Anchor anchor, String text) implements Mark {}

    /** A dot.
     *
     * @param radius of it, in the drawing's unit
     */
    record Dot(Role role, double x, double y, double radius, Shape shape) implements Mark {}
}
