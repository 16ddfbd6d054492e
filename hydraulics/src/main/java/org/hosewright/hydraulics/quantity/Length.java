package org.hosewright.hydraulics.quantity;

/** A length, a diameter or a height, held in SI.
 *
 * @param metres the value [m]; finite
 */
public record Length(double metres) implements Quantity {
    public Length {
        Numbers.requireFinite("length", metres);
    }

    /** The value given in a unit of its kind. */
    public static Length of(double value, Unit unit) {
        return new Length(Quantity.toSi(value, unit, Kind.LENGTH));
    }

    public static Length ofFeet(double value) {
        return of(value, Unit.FT);
    }

    public double feet() {
        return Unit.FT.ofSi(metres);
    }

    public static Length ofInches(double value) {
        return of(value, Unit.IN);
    }

    public double inches() {
        return Unit.IN.ofSi(metres);
    }

    public static Length ofMillimetres(double value) {
        return of(value, Unit.MM);
    }

    public double millimetres() {
        return Unit.MM.ofSi(metres);
    }

    public static Length ofMetres(double value) {
        return of(value, Unit.M);
    }

    @Override
    public double si() {
        return metres;
    }
}
