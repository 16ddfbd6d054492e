package org.hosewright.hydraulics.equipment;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** An automatic fog tip: it holds one pressure over a band of flows and is a fixed orifice below and above it.
 *
 * <p>Its pressure within the band says nothing about the flow: the supply sets it.
 *
 * @param holds pressure held; above 0
 * @param from lowest flow of the band; above 0
 * @param to highest flow of the band; above {@code from}
 */
public record Automatic(Pressure holds, Flow from, Flow to) implements Tip {
    public Automatic {
        Numbers.requirePositive("pressure held", holds.pascals());
        Numbers.requirePositive("lowest flow held", from.cubicMetresPerSecond());
        if (to.cubicMetresPerSecond() <= from.cubicMetresPerSecond()) {
            throw new InvalidInput("highest flow held", Numbers.plain(to.gpm()) + " gpm", "more than the lowest", "");
        }
    }

    @Override
    public Tip flowing(double factor) {
        return new Automatic(
                holds, new Flow(from.cubicMetresPerSecond() * factor), new Flow(to.cubicMetresPerSecond() * factor));
    }

    @Override
    public double pressure_Pa(double flow_m3s) {
        double low = Math.max(0, flow_m3s) / from.cubicMetresPerSecond();
        double high = Math.max(0, flow_m3s) / to.cubicMetresPerSecond();
        double factor = low < 1 ? low * low : high > 1 ? high * high : 1;
        return holds.pascals() * factor;
    }

    @Override
    public double flow_m3s(double pressure_Pa) {
        double root = Math.sqrt(Math.max(0, pressure_Pa) / holds.pascals());
        return root > 1 ? to.cubicMetresPerSecond() * root : from.cubicMetresPerSecond() * root;
    }

    @Override
    public double reaction_N(double pressure_Pa, double flow_m3s) {
        return Constants.FOG_REACTION * Math.max(0, flow_m3s) * Math.sqrt(Math.max(0, pressure_Pa));
    }

    @Override
    public Pressure at() {
        return holds;
    }
}
