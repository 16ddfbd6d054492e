package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A square of the flow in hundreds of gpm, times or by a whole number, per 100 ft.
 *
 * @param name how the trade calls it
 * @param times what Q^2 is multiplied by
 * @param most the highest flow it is used for [gpm]
 */
public record SquareMethod(String name, double times, double most) implements LossMethod {
    /** 2 Q^2 for 2 1/2 in hose.
     *
     * @source Palm Beach County Fire Rescue, friction loss sheet
     * @validFor modern 2 1/2 in hose
     */
    public static final SquareMethod TWO_AND_HALF_INCH = new SquareMethod("2Q^2, 2 1/2 in", 2, 500);

    /** Q^2 for 3 in hose.
     *
     * @source Palm Beach County Fire Rescue, friction loss sheet
     * @validFor modern 3 in hose
     */
    public static final SquareMethod THREE_INCH = new SquareMethod("Q^2, 3 in", 1, 1000);

    /** Condensed Q for 3 1/2 in hose, Q^2 / 3. @source IFSTA, Driver/Operator Handbook (from memory) */
    public static final SquareMethod THREE_AND_HALF_INCH = new SquareMethod("condensed Q, 3 1/2 in", 1.0 / 3, 1500);

    /** Condensed Q for 4 in hose, Q^2 / 5. @source IFSTA, Driver/Operator Handbook (from memory) */
    public static final SquareMethod FOUR_INCH = new SquareMethod("condensed Q, 4 in", 1.0 / 5, 2000);

    /** Condensed Q for 5 in hose, Q^2 / 15. @source IFSTA, Driver/Operator Handbook (from memory) */
    public static final SquareMethod FIVE_INCH = new SquareMethod("condensed Q, 5 in", 1.0 / 15, 2500);

    public SquareMethod {
        Numbers.requirePositive("factor of " + name, times);
        Numbers.requirePositive("highest flow of " + name, most);
    }

    @Override
    public Pressure loss(Flow flow, Length length) {
        double q = LossMethod.gpm(flow, 0, most) / 100;
        return Pressure.ofPsi(times * q * q * length.feet() / 100);
    }
}
