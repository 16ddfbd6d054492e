package org.hosewright.hydraulics.supply;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Volume;

/** A tanker that goes to and fro.
 *
 * @param tank what it carries; above 0
 * @source Firehouse: 3000 gal less a tenth in 12 minutes is 225 gpm
 */
public record Shuttle(Volume tank) {
    /** Minutes for a journey of no length, and for a mile at 35 mph. @source trade sources, T = 0.65 + 1.7 D */
    private static final double START_MIN = 0.65;

    private static final double MPH_MIN = 60;

    public Shuttle {
        Numbers.requirePositive("tank", tank.cubicMetres());
    }

    /** What it keeps up, by the time of a whole trip. */
    public Flow flow(Seconds trip) {
        return new Flow(
                TankTime.USABLE_SHARE * tank.cubicMetres() / Numbers.requirePositive("time of a trip", trip.seconds()));
    }

    /** Time of one way on the road.
     *
     * @param mph its safe mean speed [miles an hour]; 10 to 60
     */
    public static Seconds road(double miles, double mph) {
        Numbers.requireNotNegative("distance", miles);
        Numbers.requireWithin("mean speed", mph, 10, 60, "miles an hour");
        return new Seconds(60 * (START_MIN + MPH_MIN / mph * miles));
    }
}
