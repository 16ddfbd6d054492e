package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Volume;

/** The water in a hose: how much, how heavy, how fast.
 *
 * @param diameter inside; above 0
 */
public record HoseWater(Length diameter) {
    /** Weight of water: a column of one metre presses with the weight of one cubic metre on each square metre. */
    private static final double NEWTON_PER_M3 = Constants.WATER_PA_PER_M;

    public HoseWater {
        Numbers.requirePositive("diameter", diameter.metres());
    }

    /** What a length holds. @source NWCG, Firefighter Math: 100 ft of 1 in hose holds 942 cubic inches, 4 gal */
    public Volume in(Length length) {
        return new Volume(area_m2() * Numbers.requireNotNegative("length", length.metres()));
    }

    /** What the water in a length weighs, the hose apart. */
    public Force weight(Length length) {
        return new Force(in(length).cubicMetres() * NEWTON_PER_M3);
    }

    /** How fast the water runs [m/s]. @source trade form v = 0.4085 Q / d^2 in ft/s, gpm and in */
    public double speed_m_s(Flow flow) {
        return flow.cubicMetresPerSecond() / area_m2();
    }

    private double area_m2() {
        return Math.PI / 4 * diameter.metres() * diameter.metres();
    }
}
