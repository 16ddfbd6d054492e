package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A rule for the friction loss of hose. */
public interface LossMethod {

    /** The loss of a length at a flow.
     *
     * @throws InvalidInput the rule is not good for that flow
     */
    Pressure loss(Flow flow, Length length);

    /** The flow in gpm, in which the trade's rules are said.
     *
     * @throws InvalidInput it leaves the rule's range
     */
    static double gpm(Flow flow, double least_gpm, double most_gpm) {
        double gpm = Numbers.requireFinite("flow", flow.gpm());
        if (!(Numbers.isAtLeast(gpm, least_gpm) && Numbers.isAtLeast(most_gpm, gpm))) {
            String range = Numbers.plain(least_gpm) + " to " + Numbers.plain(most_gpm) + " gpm";
            throw new InvalidInput("flow", Numbers.plain(Numbers.toNearest(gpm, 0.1)) + " gpm", range, "");
        }
        return gpm;
    }
}
