package org.hosewright.hydraulics.quantity;

/** A flow of water, held in SI.
 *
 * @param cubicMetresPerSecond the value [m3/s]; finite
 */
public record Flow(double cubicMetresPerSecond) implements Quantity {
    public Flow {
        Numbers.requireFinite("flow", cubicMetresPerSecond);
    }

    /** The value given in a unit of its kind. */
    public static Flow of(double value, Unit unit) {
        return new Flow(Quantity.toSi(value, unit, Kind.FLOW));
    }

    public static Flow ofGpm(double value) {
        return of(value, Unit.GPM);
    }

    public double gpm() {
        return Unit.GPM.ofSi(cubicMetresPerSecond);
    }

    public static Flow ofLitresPerMinute(double value) {
        return of(value, Unit.L_MIN);
    }

    public double litresPerMinute() {
        return Unit.L_MIN.ofSi(cubicMetresPerSecond);
    }

    @Override
    public double si() {
        return cubicMetresPerSecond;
    }
}
