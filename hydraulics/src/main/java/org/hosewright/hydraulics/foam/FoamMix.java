package org.hosewright.hydraulics.foam;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Volume;

/** A foam solution: so much concentrate in the whole.
 *
 * @param share of concentrate; 0.1 % to 6 %
 * @source Firehouse: 250 gpm at 3 % is 7.5 gpm of concentrate and 242.5 gpm of water
 */
public record FoamMix(Ratio share) {
    public FoamMix {
        Numbers.requireWithin("share of foam concentrate", 100 * share.value(), 0.1, 6, "%");
    }

    public Flow concentrate(Flow solution) {
        return new Flow(share.value() * solution.cubicMetresPerSecond());
    }

    public Flow water(Flow solution) {
        return new Flow((1 - share.value()) * solution.cubicMetresPerSecond());
    }

    /** How long a stock of concentrate lasts. */
    public Seconds lasts(Volume stock, Flow solution) {
        Numbers.requirePositive("flow of solution", solution.cubicMetresPerSecond());
        return new Seconds(stock.cubicMetres() / concentrate(solution).cubicMetresPerSecond());
    }

    /** Concentrate for an area at a rate of application over a time.
     *
     * @param area_m2 burning area [m2]
     * @param rate_m_s solution on each square metre [m/s]; 0.10 gpm/ft2 for hydrocarbon spills is 6.79e-5
     */
    public Volume forSpill(double area_m2, double rate_m_s, Seconds time) {
        Numbers.requireNotNegative("area", area_m2);
        Numbers.requireNotNegative("rate of application", rate_m_s);
        return new Volume(share.value() * area_m2 * rate_m_s * time.seconds());
    }
}
