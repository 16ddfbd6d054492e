package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A feed line and a wye with equal branches: the feed at the whole flow, and one branch at its own.
 *
 * @param feed rule for the feed line
 * @param feedLength its length
 * @param branch rule for a branch
 * @param branchLength length of each branch
 * @source City of Rohnert Park, driver/operator deck 3-8
 * @validFor branches of one length, hose and tip; otherwise the branch that needs most counts, the others gated down
 */
public record WyeLoss(LossMethod feed, Length feedLength, LossMethod branch, Length branchLength) {

    /** Friction of feed and one branch.
     *
     * @param branches how many branches flow; 1 or more
     * @param each flow of each
     */
    public Pressure loss(int branches, Flow each) {
        Numbers.requirePositive("branches of a wye", branches);
        Flow whole = new Flow(branches * each.cubicMetresPerSecond());
        return new Pressure(feed.loss(whole, feedLength).pascals()
                + branch.loss(each, branchLength).pascals());
    }
}
