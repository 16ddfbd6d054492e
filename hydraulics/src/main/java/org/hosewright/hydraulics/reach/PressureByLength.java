package org.hosewright.hydraulics.reach;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** Needed pump pressure against length, a point a section of the last hose.
 *
 * @param points from one section upward
 */
public record PressureByLength(List<Point> points) {
    /** One length.
     *
     * @param length whole chain
     * @param sections whole sections in it
     * @param needed pump pressure that the duty needs, with its standard error
     * @param flow flow at the tip
     */
    public record Point(Length length, int sections, Known<Pressure> needed, Flow flow) {}

    public PressureByLength {
        points = List.copyOf(points);
    }

    /** The curve of a line at its own rise.
     *
     * @param sections how many sections of the last hose to go to; above 0
     */
    public static PressureByLength of(Line line, LossErrors errors, Bounds bounds, int sections) {
        Duty duty = Duty.of(line, bounds.target());
        Stretching stretching = new Stretching(line, errors, bounds, duty, 0);
        List<Point> points = new ArrayList<>();
        for (int count = 1; count <= sections; count++) {
            Line longer = stretching.lineOf(count);
            LineState state = stretching.stateOf(count);
            points.add(new Point(
                    longer.length(),
                    longer.sections(),
                    LineSolver.neededPump(longer, errors, duty.ask()),
                    state.flow()));
        }
        return new PressureByLength(points);
    }
}
