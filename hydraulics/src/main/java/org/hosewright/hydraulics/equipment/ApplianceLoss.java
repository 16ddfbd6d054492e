package org.hosewright.hydraulics.equipment;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** How an appliance's loss is stated. */
public sealed interface ApplianceLoss {

    /** Loss at a flow [Pa], with the sign of the flow [m3/s]. */
    double loss_Pa(double flow_m3s);

    /** A loss that grows with the square of the flow. */
    record Quadratic(Known<PointLoss> loss) implements ApplianceLoss {
        @Override
        public double loss_Pa(double flow_m3s) {
            return loss.value().k() * flow_m3s * Math.abs(flow_m3s);
        }
    }

    /** A flat allowance from a flow upward, nothing below it; the flow itself counts as reached. */
    record Rule(Pressure allowance, Flow from) implements ApplianceLoss {
        @Override
        public double loss_Pa(double flow_m3s) {
            boolean reached = Numbers.isAtLeast(Math.abs(flow_m3s), from.cubicMetresPerSecond());
            return reached ? Math.signum(flow_m3s) * allowance.pascals() : 0;
        }
    }
}
