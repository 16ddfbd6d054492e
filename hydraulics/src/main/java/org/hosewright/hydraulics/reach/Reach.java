package org.hosewright.hydraulics.reach;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.LineLimits;
import org.hosewright.hydraulics.line.Duty;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Length;

/** How far a line can be stretched, whole sections added to its last hose, and what stops it. */
public final class Reach {
    /** Standard errors above the estimate that 95 % of a normal error stays below [1]. */
    public static final double ONE_SIDED_95 = 1.645;

    private Reach() {}

    /** The longest stretch at the line's own rise.
     *
     * <p>The line must do its {@link Duty} at every length. The rise stays as it is in the line, however long.
     *
     * @throws InvalidInput nothing that grows with length is limited: no ceiling, no rated pump, no service test
     */
    public static ReachResult longest(Line line, LossErrors errors, Bounds bounds) {
        Duty duty = Duty.of(line, bounds.target());
        Stretching best = new Stretching(line, errors, bounds, duty, 0);
        Stretching safe = new Stretching(line, errors, bounds, duty, ONE_SIDED_95);
        int most = best.most();
        Limit stop = best.stopAt(most + 1);
        List<String> assumed = new ArrayList<>(duty.assumed());
        assumed.addAll(errors.listAssumed(line));
        Line longest = best.lineOf(Math.max(1, most));
        return new ReachResult(
                most == 0 ? new Length(0) : longest.length(),
                most == 0 ? 0 : longest.sections(),
                stop,
                LineLimits.findMostPump(stop, best.stateOf(most + 1), bounds),
                safe.most() == 0 ? new Length(0) : safe.lineOf(safe.most()).length(),
                assumed);
    }
}
