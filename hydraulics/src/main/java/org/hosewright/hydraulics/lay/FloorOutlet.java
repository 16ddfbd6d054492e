package org.hosewright.hydraulics.lay;

import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** The kind of a standpipe's outlet. */
public sealed interface FloorOutlet {

    /** A plain valve that loses nothing worth counting. */
    record Plain() implements FloorOutlet {}

    /** A reducing valve with a setting that nobody changes at the fire.
     *
     * @param holds the most that it lets stand behind it
     */
    record FixedReducer(Pressure holds) implements FloorOutlet {
        public FixedReducer {
            Numbers.requirePositive("pressure that a reducing outlet holds", holds.pascals());
        }
    }

    /** A reducing valve that can be set with its own tool.
     *
     * @param set the most that it lets stand behind it as it is set now
     */
    record AdjustableReducer(Pressure set) implements FloorOutlet {
        public AdjustableReducer {
            Numbers.requirePositive("pressure that a reducing outlet is set to", set.pascals());
        }
    }

    /** A plate that loses pressure with the flow and holds nothing back without it. */
    record Restrictor(PointLoss loss) implements FloorOutlet {}

    /** An outlet of a kind that nobody has looked up: it gives no pressure. */
    record Unknown() implements FloorOutlet {}

    /** The most that stands behind it [Pa]; no bound where it does not reduce. */
    default double most_Pa() {
        if (this instanceof FixedReducer fixed) {
            return fixed.holds().pascals();
        }
        return this instanceof AdjustableReducer set ? set.set().pascals() : Double.POSITIVE_INFINITY;
    }
}
