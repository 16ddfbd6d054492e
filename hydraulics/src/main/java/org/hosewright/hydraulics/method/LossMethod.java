package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** A rule for the friction loss of hose. */
public interface LossMethod {

    /** The loss of a length at a flow.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput the rule is not good for that flow
     */
    Pressure loss(Flow flow, Length length);
}
