package org.hosewright.hydraulics.quantity;

import org.hosewright.hydraulics.error.InvalidInput;

/** A number with its kind, held in SI. */
public sealed interface Quantity
        permits Pressure, Flow, Length, Force, Volume, Seconds, Temperature, Ratio, HoseLoss, PointLoss {

    /** The value in SI. */
    double si();

    /** A value in SI, checked to be of the wanted kind.
     *
     * @throws InvalidInput the unit belongs to another kind, or the value is not finite
     */
    static double toSi(double value, Unit unit, Kind kind) {
        if (unit.kind() != kind) {
            throw new InvalidInput(kind.word(), Numbers.plain(value) + " " + unit.symbol(), "a " + kind.word(), "");
        }
        return unit.toSi(Numbers.requireFinite(kind.word(), value));
    }
}
