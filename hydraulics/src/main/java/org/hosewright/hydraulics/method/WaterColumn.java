package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** Height and pressure of standing water, with the figure that a source uses.
 *
 * @param pascalsPerMetre pressure of one metre [Pa/m]; above 0
 */
public record WaterColumn(double pascalsPerMetre) {
    /** 0.434 psi per foot. @source Honolulu Community College, fire hydraulics notes */
    public static final WaterColumn EXACT = new WaterColumn(Constants.WATER_PA_PER_M);

    /** Half a psi per foot, a field figure 15 % high. @source common practice */
    public static final WaterColumn FIELD = new WaterColumn(0.5 * Constants.PSI_PA / Constants.FOOT_M);

    /** The field allowance for a floor. @source common practice: 10 ft floors at 4.34 psi, rounded up */
    public static final Pressure PER_FLOOR = Pressure.ofPsi(5);

    public WaterColumn {
        Numbers.requirePositive("pressure of a height of water", pascalsPerMetre);
    }

    /** A column by how many feet weigh one psi: 2.304 or 2.31. */
    public static WaterColumn ofFeetPerPsi(double feet) {
        return new WaterColumn(Constants.PSI_PA / (feet * Constants.FOOT_M));
    }

    public Pressure pressure(Length height) {
        return new Pressure(pascalsPerMetre * height.metres());
    }

    public Length height(Pressure pressure) {
        return new Length(pressure.pascals() / pascalsPerMetre);
    }

    /** The field allowance for floors above the first.
     *
     * @param floors counted from the street's floor as 1; 1 or more
     * @throws InvalidInput a floor below the street's
     */
    public static Pressure forFloor(int floors) {
        if (floors < 1) {
            throw new InvalidInput("floor", String.valueOf(floors), "1, the street's floor, or more", "");
        }
        return new Pressure((floors - 1) * PER_FLOOR.pascals());
    }
}
