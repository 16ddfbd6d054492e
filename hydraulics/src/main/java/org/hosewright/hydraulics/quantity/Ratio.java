package org.hosewright.hydraulics.quantity;

/** A share or a factor without unit, held in SI.
 *
 * @param value the value [1]; finite
 */
public record Ratio(double value) implements Quantity {
    public Ratio {
        Numbers.requireFinite("ratio", value);
    }

    /** The value given in a unit of its kind. */
    public static Ratio of(double value, Unit unit) {
        return new Ratio(Quantity.toSi(value, unit, Kind.RATIO));
    }

    @Override
    public double si() {
        return value;
    }
}
