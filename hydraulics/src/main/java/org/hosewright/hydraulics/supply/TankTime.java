package org.hosewright.hydraulics.supply;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Volume;

/** How long the water in a tank lasts.
 *
 * @param lasts time until the usable water is gone
 * @param drawn flow that leaves the tank: the wanted one, or what the tank-to-pump piping lets through
 * @param isShort true where less than the wanted flow can leave the tank
 */
public record TankTime(Seconds lasts, Flow drawn, boolean isShort) {
    /** The share of the level that is counted on. @source tanker rule of 90 %, Firehouse: 3,000 gal less 10 % */
    public static final double USABLE_SHARE = 0.9;

    /** How long a level lasts.
     *
     * @param level water in the tank as entered; above 0
     * @param wanted flow that the lines take; above 0
     * @param tankToPump the most that the tank's piping lets through, where known
     */
    public static TankTime of(Volume level, Flow wanted, Optional<Flow> tankToPump) {
        Numbers.requirePositive("water in the tank", level.cubicMetres());
        Numbers.requirePositive("flow from the tank", wanted.cubicMetresPerSecond());
        tankToPump.ifPresent(most -> Numbers.requirePositive("tank-to-pump flow", most.cubicMetresPerSecond()));
        double wanted_m3s = wanted.cubicMetresPerSecond();
        double drawn_m3s =
                Math.min(wanted_m3s, tankToPump.map(Flow::cubicMetresPerSecond).orElse(wanted_m3s));
        return new TankTime(
                new Seconds(USABLE_SHARE * level.cubicMetres() / drawn_m3s),
                new Flow(drawn_m3s),
                drawn_m3s < wanted_m3s);
    }
}
