package org.hosewright.hydraulics.lay;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;

/** What a ball valve with its handle half over takes: an estimate, to be replaced by the company's own figure.
 *
 * @source handbooks of pipe flow give a ball valve at 45 degrees about 30 velocity heads (from memory)
 */
public final class HalfGate {
    private static final double VELOCITY_HEADS = 30;

    /** Half the density of water [kg/m3]. */
    private static final double HALF_WATER_KG_M3 = 500;

    private HalfGate() {}

    /** The estimate for a waterway of a diameter. */
    public static PointLoss of(Length diameter) {
        double bore_m = Numbers.requirePositive("diameter of a gate", diameter.metres());
        double area_m2 = Math.PI / 4 * bore_m * bore_m;
        return new PointLoss(VELOCITY_HEADS * HALF_WATER_KG_M3 / (area_m2 * area_m2));
    }
}
