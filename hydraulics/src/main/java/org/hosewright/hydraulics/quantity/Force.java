package org.hosewright.hydraulics.quantity;

/** A force, held in SI.
 *
 * @param newtons the value [N]; finite
 */
public record Force(double newtons) implements Quantity {
    public Force {
        Numbers.requireFinite("force", newtons);
    }

    /** The value given in a unit of its kind. */
    public static Force of(double value, Unit unit) {
        return new Force(Quantity.toSi(value, unit, Kind.FORCE));
    }

    public static Force ofLbf(double value) {
        return of(value, Unit.LBF);
    }

    public double lbf() {
        return Unit.LBF.ofSi(newtons);
    }

    @Override
    public double si() {
        return newtons;
    }
}
