package org.hosewright.hydraulics.network.law;

import org.hosewright.hydraulics.quantity.Numbers;

/** A flat loss from a flow upward, nothing below it.
 *
 * <p>The step itself is a ramp over the last billionth of that flow, so that a flow that lands on it is found.
 *
 * @param allowance_Pa the flat loss [Pa]; above 0
 * @param from_m3s the flow from which it counts [m3/s]; above 0
 */
public record Allowance(double allowance_Pa, double from_m3s) implements Law {
    /** Width of the ramp as a share of the flow it ends at [1]. */
    private static final double RAMP = 1e-9;

    public Allowance {
        Numbers.requirePositive("allowance", allowance_Pa);
        Numbers.requirePositive("flow of an allowance", from_m3s);
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        double risen = (Math.abs(flow_m3s) - from_m3s * (1 - RAMP)) / (RAMP * from_m3s);
        return Math.signum(flow_m3s) * allowance_Pa * Math.min(1, Math.max(0, risen));
    }

    @Override
    public double slope(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        boolean ramp = size >= from_m3s * (1 - RAMP) && size < from_m3s;
        return ramp ? allowance_Pa / (RAMP * from_m3s) : 0;
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double share = Math.min(1, Math.abs(drop_Pa) / allowance_Pa);
        return Math.signum(drop_Pa) * from_m3s * (1 - RAMP * (1 - share));
    }
}
