package org.hosewright.hydraulics.network.law;

import java.util.List;
import org.hosewright.hydraulics.quantity.Numbers;

/** A flat loss from a flow upward, that flow included; nothing below it.
 *
 * <p>The step itself is a ramp over the last billionth below that flow, so that a flow that lands on it is found.
 *
 * @param allowance_Pa the flat loss [Pa]; above 0
 * @param from_m3s the flow from which it counts [m3/s]; above 0
 */
public record Allowance(double allowance_Pa, double from_m3s) implements Law {
    /** Width of the ramp as a share of the flow it ends at [1]. */
    private static final double RAMP = 1e-9;

    /** What rounding may move a flow off the ramp, as a share of it [1]. */
    private static final double ROUNDING = 2e-15;

    private static final List<String> NAMES = List.of("allowance_Pa", "from_m3s");

    public Allowance {
        Numbers.requirePositive("allowance", allowance_Pa);
        Numbers.requirePositive("flow of an allowance", from_m3s);
    }

    @Override
    public double loss_Pa(double flow_m3s) {
        return Math.signum(flow_m3s) * allowance_Pa * share(flow_m3s);
    }

    @Override
    public double slope(double flow_m3s) {
        double share = share(flow_m3s);
        return share > 0 && share < 1 ? allowance_Pa / (RAMP * from_m3s) : 0;
    }

    @Override
    public double flow_m3s(double drop_Pa) {
        double share = Math.min(1, Math.abs(drop_Pa) / allowance_Pa);
        return Math.signum(drop_Pa) * from_m3s * (1 - RAMP * (1 - share));
    }

    @Override
    public double pause_m3s(double from_m3s, double to_m3s) {
        double middle = this.from_m3s * (1 - RAMP / 2);
        if (isOnStep(to_m3s)) {
            return Math.signum(to_m3s) * middle;
        }
        boolean wasBeyond = Math.abs(from_m3s) > this.from_m3s;
        boolean isBeyond = Math.abs(to_m3s) > this.from_m3s;
        boolean turns = wasBeyond && isBeyond && from_m3s * to_m3s < 0;
        boolean crosses = !isOnStep(from_m3s) && (wasBeyond != isBeyond || turns);
        return crosses ? Math.signum(wasBeyond ? from_m3s : to_m3s) * middle : to_m3s;
    }

    @Override
    public double misfit_Pa(double flow_m3s, double drop_Pa) {
        double along_Pa = Math.signum(flow_m3s) * drop_Pa;
        double off_Pa = Math.abs(drop_Pa - loss_Pa(flow_m3s));
        double offStep_Pa = Math.max(0, Math.max(-along_Pa, along_Pa - allowance_Pa));
        return isOnStep(flow_m3s) ? Math.min(off_Pa, offStep_Pa) : off_Pa;
    }

    /** Whether a flow lies on the ramp, rounding apart. */
    private boolean isOnStep(double flow_m3s) {
        double size = Math.abs(flow_m3s);
        return size >= from_m3s * (1 - RAMP - ROUNDING) && size <= from_m3s * (1 + ROUNDING);
    }

    @Override
    public List<String> listCoefficients() {
        return NAMES;
    }

    @Override
    public double coefficient(int at) {
        return Numbered.require(this, at) == 0 ? allowance_Pa : from_m3s;
    }

    @Override
    public Law withCoefficient(int at, double value) {
        Numbered.require(this, at);
        return new Allowance(at == 0 ? value : allowance_Pa, at == 1 ? value : from_m3s);
    }

    @Override
    public double lossByCoefficient(int at, double flow_m3s) {
        Numbered.require(this, at);
        double share = share(flow_m3s);
        double ramp = share > 0 && share < 1 ? -allowance_Pa * Math.abs(flow_m3s) / (RAMP * from_m3s * from_m3s) : 0;
        return Math.signum(flow_m3s) * (at == 0 ? share : ramp);
    }

    private double share(double flow_m3s) {
        double risen = (Math.abs(flow_m3s) - from_m3s * (1 - RAMP)) / (RAMP * from_m3s);
        return Math.abs(flow_m3s) >= from_m3s ? 1 : Math.min(1, Math.max(0, risen));
    }
}
