package org.hosewright.hydraulics.profile;

import java.util.ArrayList;
import java.util.List;

/** Marks as they are put down, and the room that they take. */
final class Pen {
    /** Answers stand so much larger than the small type [em]. */
    static final double LARGE_em = 2.4;

    private final double em;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();
    private final List<List<Point>> lines = new ArrayList<>();

    Pen(double em) {
        this.em = em;
    }

    double em() {
        return em;
    }

    List<Mark> marks() {
        return marks;
    }

    void stroke(Role role, List<Point> points) {
        marks.add(new Mark.Stroke(role, points));
    }

    void stroke(Role role, double x1, double y1, double x2, double y2) {
        stroke(role, List.of(new Point(x1, y1), new Point(x2, y2)));
    }

    /** A line that names should not lie on. */
    void strokeKeptClear(Role role, List<Point> points) {
        stroke(role, points);
        lines.add(List.copyOf(points));
    }

    void area(Role role, List<Point> points) {
        marks.add(new Mark.Area(role, points));
    }

    void dot(Role role, Point at, double radius, Shape shape) {
        marks.add(new Mark.Dot(role, at.x(), at.y(), radius, shape));
        taken.add(new Box(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius));
    }

    Mark.Text small(Role role, double x, double y, Anchor anchor, String text) {
        return new Mark.Text(role, x, y, em, anchor, text);
    }

    /** Sets a text where it is, whatever stands there. */
    void set(Mark.Text text) {
        if (!text.text().isEmpty()) {
            marks.add(text);
            taken.add(Lettering.box(text));
        }
    }

    /** True where nothing has been set and no dot stands. */
    boolean isFree(Box box) {
        return taken.stream().noneMatch(box::meets);
    }

    /** True where no line that should be kept clear passes. */
    boolean isClear(Box box) {
        for (List<Point> line : lines) {
            for (int i = 1; i < line.size(); i++) {
                if (box.meets(line.get(i - 1), line.get(i))) {
                    return false;
                }
            }
        }
        return true;
    }
}
