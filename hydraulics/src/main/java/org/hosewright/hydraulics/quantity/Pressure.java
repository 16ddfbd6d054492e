package org.hosewright.hydraulics.quantity;

/** A pressure above the air's, held in SI.
 *
 * @param pascals the value [Pa]; finite
 */
public record Pressure(double pascals) implements Quantity {
    public Pressure {
        Numbers.requireFinite("pressure", pascals);
    }

    /** The value given in a unit of its kind. */
    public static Pressure of(double value, Unit unit) {
        return new Pressure(Quantity.toSi(value, unit, Kind.PRESSURE));
    }

    public static Pressure ofPsi(double value) {
        return of(value, Unit.PSI);
    }

    public double psi() {
        return Unit.PSI.ofSi(pascals);
    }

    public static Pressure ofKPa(double value) {
        return of(value, Unit.KPA);
    }

    public double kPa() {
        return Unit.KPA.ofSi(pascals);
    }

    public static Pressure ofBar(double value) {
        return of(value, Unit.BAR);
    }

    public double bar() {
        return Unit.BAR.ofSi(pascals);
    }

    @Override
    public double si() {
        return pascals;
    }
}
