package org.hosewright.hydraulics.line;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;

/** What is asked of a line. */
public sealed interface Ask {

    /** So much pressure at the tip. */
    record AtTip(Pressure pressure) implements Ask {}

    /** So much flow at the tip. */
    record AtFlow(Flow flow) implements Ask {}

    /** So much pressure at the pump. */
    record AtPump(Pressure pressure) implements Ask {}
}
