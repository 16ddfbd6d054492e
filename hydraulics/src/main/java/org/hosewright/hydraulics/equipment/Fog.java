package org.hosewright.hydraulics.equipment;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A fog tip of fixed gallonage, or one ring setting of a selectable one: Q = K sqrt(p) through its rated point.
 *
 * @param rated flow at the rated pressure; above 0
 * @param at rated pressure; above 0
 * @source common practice for the K form; reaction 0.0505 Q sqrt(p)
 */
public record Fog(Flow rated, Pressure at) implements KFactorTip {
    public Fog {
        Numbers.requirePositive("rated flow", rated.cubicMetresPerSecond());
        Numbers.requirePositive("rated pressure", at.pascals());
    }

    @Override
    public double k() {
        return rated.cubicMetresPerSecond() / Math.sqrt(at.pascals());
    }

    @Override
    public Tip flowing(double factor) {
        return new Fog(new Flow(rated.cubicMetresPerSecond() * factor), at);
    }

    @Override
    public double reaction_N(double pressure_Pa, double flow_m3s) {
        return Constants.FOG_REACTION * Math.max(0, flow_m3s) * Math.sqrt(Math.max(0, pressure_Pa));
    }
}
