package org.hosewright.hydraulics.foam;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Volume;

/** An in-line eductor as it stands in a lay: what it is made for, and the concentrate beside it.
 *
 * <p>Its flow follows the root of its inlet pressure, whatever lies behind it, as long as the back pressure stays below
 * its share of the inlet; above that share it draws nothing and flows less.
 *
 * @param rated the flow it is made for, at the inlet pressure it is made for
 * @param backShare the most back pressure, as a share of the inlet; above 0 and below 1
 * @param draws the concentrate in the whole
 * @param concentrate what stands ready, where it is known
 * @source Firehouse: usually 200 psi at the inlet, back pressure at most 65 % of it, its flow the nozzle's
 */
public record Proportioner(Eductor rated, Ratio backShare, FoamMix draws, Optional<Volume> concentrate) {
    public Proportioner {
        Numbers.requireWithin("back pressure of an eductor", 100 * backShare.value(), 1, 99, "%");
    }

    /** The flow that an inlet pressure drives while nothing holds it back [m3/s]. */
    public double free_m3s(double inlet_Pa) {
        double share = Math.max(0, inlet_Pa) / rated.inlet().pascals();
        return rated.flow().cubicMetresPerSecond() * Math.sqrt(share);
    }

    /** The inlet pressure that drives a flow while nothing holds it back [Pa]. */
    public double inlet_Pa(double flow_m3s) {
        double share = flow_m3s / rated.flow().cubicMetresPerSecond();
        return rated.inlet().pascals() * share * share;
    }

    /** The most back pressure at an inlet pressure [Pa]. */
    public double mostBack_Pa(double inlet_Pa) {
        return backShare.value() * inlet_Pa;
    }

    /** How long the concentrate lasts at a flow of solution, where it is known. */
    public Optional<Seconds> lasts(Flow solution) {
        double drawn = draws.concentrate(solution).cubicMetresPerSecond();
        return drawn > 0 ? concentrate.map(stock -> new Seconds(stock.cubicMetres() / drawn)) : Optional.empty();
    }
}
