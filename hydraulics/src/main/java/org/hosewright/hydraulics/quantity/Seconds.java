package org.hosewright.hydraulics.quantity;

/** A span of time, held in SI.
 *
 * @param seconds the value [s]; finite
 */
public record Seconds(double seconds) implements Quantity {
    public Seconds {
        Numbers.requireFinite("time", seconds);
    }

    /** The value given in a unit of its kind. */
    public static Seconds of(double value, Unit unit) {
        return new Seconds(Quantity.toSi(value, unit, Kind.TIME));
    }

    @Override
    public double si() {
        return seconds;
    }
}
