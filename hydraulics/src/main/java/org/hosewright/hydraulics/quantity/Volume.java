package org.hosewright.hydraulics.quantity;

/** A volume of water, held in SI.
 *
 * @param cubicMetres the value [m3]; finite
 */
public record Volume(double cubicMetres) implements Quantity {
    public Volume {
        Numbers.requireFinite("volume", cubicMetres);
    }

    /** The value given in a unit of its kind. */
    public static Volume of(double value, Unit unit) {
        return new Volume(Quantity.toSi(value, unit, Kind.VOLUME));
    }

    public static Volume ofGallons(double value) {
        return of(value, Unit.GAL);
    }

    public double gallons() {
        return Unit.GAL.ofSi(cubicMetres);
    }

    public static Volume ofLitres(double value) {
        return of(value, Unit.L);
    }

    public double litres() {
        return Unit.L.ofSi(cubicMetres);
    }

    @Override
    public double si() {
        return cubicMetres;
    }
}
