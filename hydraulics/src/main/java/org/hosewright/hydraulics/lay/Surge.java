package org.hosewright.hydraulics.lay;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** The velocity of water in a hose and the pressure that stopping it at once may add: an estimate.
 *
 * <p>It warns and never passes a limit: no wave speed of a fire hose was found published.
 *
 * @param velocity_ms mean velocity [m/s]
 * @param wave_ms speed of the pressure wave that the rise rests on [m/s]
 * @source Joukowsky: rise = density times wave speed times change of velocity; velocity in ft/s 0.4085 Q / d^2
 * @validFor a stop within the time that the wave takes to the pump and back
 */
public record Surge(double velocity_ms, double wave_ms) {
    /** The upper end of what soft hose is thought to have [m/s]: 1,000 ft/s. @source estimate 250 to 1,000 ft/s */
    public static final double WAVE_MS = 1000 * Constants.FOOT_M;

    /** Density of water [kg/m3]. */
    private static final double WATER_KG_M3 = 1000;

    public Surge {
        Numbers.requireFinite("velocity", velocity_ms);
        Numbers.requirePositive("wave speed", wave_ms);
    }

    /** The surge of a hose at the wave speed that is taken where none is stated. */
    public static Surge of(Length diameter, Flow flow) {
        double area_m2 = Math.PI / 4 * diameter.metres() * diameter.metres();
        return new Surge(flow.cubicMetresPerSecond() / area_m2, WAVE_MS);
    }

    /** Velocity in feet per second. */
    public double feetPerSecond() {
        return velocity_ms / Constants.FOOT_M;
    }

    /** What stopping the water at once may add, an estimate. */
    public Pressure rise() {
        return new Pressure(WATER_KG_M3 * wave_ms * Math.abs(velocity_ms));
    }
}
