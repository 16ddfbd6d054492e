package org.hosewright.hydraulics.order;

import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Pressure;

/** How a company orders pump pressures: as round figures on a gauge, checked from both sides of what the losses may be.
 *
 * @param errors how the losses' errors hang together
 * @param bounds what the company has set
 * @param rounding what figures are rounded to
 * @param gauge the gauge that figures are read on
 */
public record Ordering(LossErrors errors, Bounds bounds, Rounding rounding, PumpGauge gauge) {
    /** The ordering on a gauge before the discharge piping that reads true. */
    public static Ordering of(LossErrors errors, Bounds bounds, Rounding rounding) {
        return new Ordering(errors, bounds, rounding, PumpGauge.TRUE);
    }

    /** The check of the round figure for what a line is there to do. */
    public OrderedCheck forDuty(Line line) {
        Duty duty = Duty.of(line, bounds.target());
        return rounded(line, gauge.reads(LineSolver.solve(line, duty.ask())));
    }

    /** The check of a wished figure, rounded first.
     *
     * @param wish what the gauge would have to show
     * @throws org.hosewright.hydraulics.error.InvalidInput the figure stands for no pump pressure above 0
     */
    public OrderedCheck rounded(Line line, Pressure wish) {
        return new Checking(line, this).check(rounding.round(wish), wish);
    }

    /** The check of a figure as it stands, rounded or not.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput the figure stands for no pump pressure above 0
     */
    public OrderedCheck asOrdered(Line line, Pressure figure) {
        return new Checking(line, this).check(figure, figure);
    }
}
