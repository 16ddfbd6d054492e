package org.hosewright.hydraulics.quantity;

/** A temperature, held in SI.
 *
 * @param kelvin the value [K]; finite
 */
public record Temperature(double kelvin) implements Quantity {
    public Temperature {
        Numbers.requireFinite("temperature", kelvin);
    }

    /** The value given in a unit of its kind. */
    public static Temperature of(double value, Unit unit) {
        return new Temperature(Quantity.toSi(value, unit, Kind.TEMPERATURE));
    }

    @Override
    public double si() {
        return kelvin;
    }
}
