package org.hosewright.hydraulics.supply;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** Lifting water by the weight of the air.
 *
 * @param air pressure of the air; 8 to 15.5 psi
 * @source NWCG, Firefighter Math: 14.7 psi times 2.304 is 33.9 ft, two thirds of it 22.5 ft
 */
public record Drafting(Pressure air) {
    /** At the sea. */
    public static final Drafting SEA_LEVEL = new Drafting(Pressure.ofPsi(14.7));

    private static final double WORKING_SHARE = 2.0 / 3;

    public Drafting {
        Numbers.requireWithin("pressure of the air", air.psi(), 8, 15.5, "psi");
    }

    /** The lift that a perfect vacuum would make. */
    public Length theory() {
        return new Length(air.pascals() / Constants.WATER_PA_PER_M);
    }

    /** The lift to count on. */
    public Length working() {
        return new Length(WORKING_SHARE * theory().metres());
    }

    /** What lift and suction hose take from the pump's own pressure.
     *
     * @param lift from the water to the pump
     * @param losses of suction hose and strainer, as a height
     * @throws InvalidInput more than the air can lift
     * @source study cards: (lift + losses in feet) / 2.3
     */
    public Pressure correction(Length lift, Length losses) {
        double height_m = Numbers.requireNotNegative("lift", lift.metres())
                + Numbers.requireNotNegative("losses of the suction hose", losses.metres());
        if (height_m >= theory().metres()) {
            throw new InvalidInput(
                    "lift with losses",
                    Numbers.plain(new Length(height_m).feet()) + " ft",
                    "less than " + Numbers.fixed(theory().feet(), 1) + " ft",
                    "");
        }
        return new Pressure(Constants.WATER_PA_PER_M * height_m);
    }
}
