package org.hosewright.hydraulics.lay;

import java.util.function.DoubleUnaryOperator;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A pump that keeps its speed, sliding along its curve through a point.
 *
 * @param net_Pa what it adds at the point [Pa]
 * @param flow_m3s the flow there [m3/s]
 * @param rated its rated capacity
 * @source a centrifugal pump adds about a fifth of 150 psi more with nothing flowing than at its rated capacity, less
 *     with the square of the flow: common practice (from memory), an estimate
 */
record PumpSlide(double net_Pa, double flow_m3s, Flow rated) {
    /** How much less a pump adds at its rated capacity than with nothing flowing. */
    static final Pressure FALL = Pressure.ofPsi(30);

    PumpSlide {
        Numbers.requirePositive("rated capacity of the pump", rated.cubicMetresPerSecond());
    }

    /** What it adds at a flow [Pa]. */
    double net_Pa(double at_m3s) {
        double share = at_m3s / rated.cubicMetresPerSecond();
        double from = flow_m3s / rated.cubicMetresPerSecond();
        return net_Pa + FALL.pascals() * (from * from - share * share);
    }

    /** The pump pressure with nothing flowing [Pa].
     *
     * @param intake_Pa pressure at the intake then [Pa]
     */
    Pressure shut(double intake_Pa) {
        return new Pressure(Math.max(0, net_Pa(0) + intake_Pa));
    }

    /** How what it adds falls with the flow [Pa s/m3]. */
    static double slope(Flow rated, Flow at) {
        double most = rated.cubicMetresPerSecond();
        return -2 * FALL.pascals() * at.cubicMetresPerSecond() / (most * most);
    }

    /** The pump pressure at which the lines take what the pump gives.
     *
     * @param taken flow that the lines take by pump pressure [Pa to m3/s]
     * @param intake pressure at the intake by flow [m3/s to Pa]
     */
    Pressure pressure(DoubleUnaryOperator taken, DoubleUnaryOperator intake) {
        DoubleUnaryOperator over = pump_Pa -> {
            double q = taken.applyAsDouble(pump_Pa);
            return pump_Pa - net_Pa(q) - intake.applyAsDouble(q);
        };
        double high = Math.max(1, net_Pa(0) + Math.max(0, intake.applyAsDouble(0)));
        while (over.applyAsDouble(high) < 0) {
            high *= 2;
        }
        return new Pressure(Rising.zero(over, 0, high, high));
    }
}
