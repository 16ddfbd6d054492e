package org.hosewright.hydraulics.lay;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Temperature;
import org.hosewright.hydraulics.quantity.Unit;

/** How far below the air's pressure an intake may go before the water boils.
 *
 * @param air_Pa pressure of the air [Pa]
 * @param vapour_Pa pressure at which the water boils [Pa]
 */
record Suction(double air_Pa, double vapour_Pa) {
    /** At the sea [Pa]. @source NWCG Firefighter Math: 14.7 psi */
    private static final double SEA_PA = 14.7 * Constants.PSI_PA;

    /** What the air loses with height [Pa/m]. @source NWCG and study cards: about 0.5 psi per 1,000 ft */
    private static final double PER_M = 0.5 * Constants.PSI_PA / (1000 * Constants.FOOT_M);

    /** The share to count on. @source NWCG: two thirds of what a perfect vacuum would lift */
    private static final double WORKING_SHARE = 2.0 / 3;

    /** Water of 60 F at the sea. */
    private static final Suction USUAL = of(new Length(0), Temperature.of(60, Unit.F));

    /** At a height above the sea with water of a temperature.
     *
     * @source Tetens' formula for the vapour (from memory); 0.6, 1.2 and 2.2 ft at 60, 80 and 100 F (from memory)
     */
    static Suction of(Length altitude, Temperature water) {
        double feet = Numbers.requireWithin("altitude", altitude.feet(), -1500, 15_000, "ft");
        double celsius = Numbers.requireWithin("temperature of the water", water.kelvin() - 273.15, 0, 60, "C");
        double vapour_Pa = 610.78 * Math.exp(17.27 * celsius / (celsius + 237.3));
        return new Suction(SEA_PA - PER_M * feet * Constants.FOOT_M, vapour_Pa);
    }

    /** The tightest of a supply's suctions. */
    static Suction of(Supply supply) {
        Suction tightest = USUAL;
        for (Supply.Feed feed : supply.feeds()) {
            if (feed.source() instanceof Source.Draft draft) {
                Suction own = of(draft.altitude(), draft.water());
                tightest = own.most_Pa() < tightest.most_Pa() ? own : tightest;
            }
        }
        return tightest;
    }

    /** The most that the air can lift and push through suction hose before the water boils [Pa]. */
    double most_Pa() {
        return air_Pa - vapour_Pa;
    }

    /** What to count on [Pa]. */
    double working_Pa() {
        return WORKING_SHARE * air_Pa - vapour_Pa;
    }
}
