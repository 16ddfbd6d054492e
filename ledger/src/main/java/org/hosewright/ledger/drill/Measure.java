package org.hosewright.ledger.drill;

import java.util.function.Function;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** How a kind of number, and a change of it, is said.
 *
 * @param text the number with its 95 % half-width
 * @param perSi what a change of 1 in SI is in the unit that people read
 * @param unit that unit
 */
record Measure<Q extends Quantity>(Function<Known<Q>, String> text, double perSi, String unit) {
    private static final double TENTH = 0.1;

    static Measure<HoseLoss> hose(UnitSystem units, Flow flow) {
        Length over = units == UnitSystem.US ? Length.ofFeet(100) : Length.ofMetres(100);
        double one = units.show(new HoseLoss(1).over(over, flow));
        return new Measure<>(
                known -> QuantityShown.of(units).hoseLossAt(known, flow),
                one,
                symbol(units) + " per " + text(units, over));
    }

    static Measure<PointLoss> piping(UnitSystem units, Flow flow) {
        double one = units.show(new PointLoss(1).at(flow));
        return new Measure<>(known -> QuantityShown.of(units).pointLossAt(known, flow), one, symbol(units));
    }

    static Measure<Ratio> factor(UnitSystem units) {
        return new Measure<>(known -> QuantityShown.of(units).change(known), 100, "%");
    }

    static Measure<Pressure> pressure(UnitSystem units) {
        double one = units.show(new Pressure(1));
        return new Measure<>(known -> QuantityShown.of(units).withBand(known), one, symbol(units));
    }

    static String text(UnitSystem units, Quantity quantity) {
        return QuantityShown.of(units).text(quantity);
    }

    private static String symbol(UnitSystem units) {
        return units.pressure().symbol();
    }

    /** The tenths of its unit that a change is at most. */
    double tenths(double si) {
        return Math.ceil(Math.abs(si) * perSi / TENTH - 1e-9);
    }

    /** A change as people read it, rounded up to a tenth. */
    String change(double si) {
        return Numbers.plain(Numbers.toNearest(tenths(si) * TENTH, TENTH)) + " " + unit;
    }
}
