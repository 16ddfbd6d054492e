package org.hosewright.hydraulics.quantity;

import java.util.Optional;

/** Reading of quantities as people write them: a number and a unit, {@code 1 3/4 in}, {@code 150 gpm}.
 *
 * <p>The decimal sign is a point, the unit is spelled exactly, the space before it is optional. A value may carry
 * its standard error where {@link Known} is asked for: {@code 105 ± 2 psi}; {@code +-} is read as {@code ±}.
 * Whatever cannot be read throws {@code InvalidInput} without a place; the caller knows file, line and key.
 */
public final class QuantityText {
    private static final String HOSE_LOSS =
            "a loss of a length at a flow, as in '9.19 psi / 100 ft @ 100 gpm' or '14.5 kPa / 100 m @ 100 L/min'";
    private static final String POINT_LOSS = "a loss at a flow, as in '2.06 psi @ 100 gpm' or '0.7 kPa @ 100 L/min'";
    private static final String RATED = "a flow at a pressure, as in '150 gpm @ 75 psi' or '570 L/min @ 520 kPa'";
    private static final String BY_LENGTH = "a pressure for a length, as in '18 psi / 100 ft' or '400 kPa / 100 m'";

    private QuantityText() {}

    /** A quantity of a kind, its unit written behind it. */
    public static Quantity parse(Kind kind, String text) {
        QuantityCursor cursor = new QuantityCursor(kind.word(), text, kind.inWords());
        Quantity value = kind.ofSi(plain(cursor, kind, text));
        cursor.end();
        return value;
    }

    /** A quantity of a unit's kind that is written without it, as in a column whose head names the unit. */
    public static Quantity parse(Unit unit, String number) {
        Kind kind = unit.kind();
        QuantityCursor cursor = new QuantityCursor(kind.word(), number, "a number of " + unit.symbol());
        double si = Plausible.check(kind, cursor.number().times(unit), number);
        cursor.end();
        return kind.ofSi(si);
    }

    /** A quantity of a kind with its standard error, where one is written. */
    public static Known<Quantity> known(Kind kind, String text) {
        QuantityCursor cursor = new QuantityCursor(kind.word(), text, kind.inWords());
        Decimal number = cursor.number();
        Optional<Decimal> error = cursor.plusMinus();
        Unit unit = cursor.unit(kind);
        cursor.end();
        Quantity value = kind.ofSi(Plausible.check(kind, number.times(unit), text));
        return new Known<>(value, error.map(e -> kind.ofSi(e.times(unit.size()))));
    }

    public static Pressure pressure(String text) {
        return (Pressure) parse(Kind.PRESSURE, text);
    }

    public static Flow flow(String text) {
        return (Flow) parse(Kind.FLOW, text);
    }

    /** A length, a diameter, or a rise with its sign. */
    public static Length length(String text) {
        return (Length) parse(Kind.LENGTH, text);
    }

    public static Force force(String text) {
        return (Force) parse(Kind.FORCE, text);
    }

    public static Volume volume(String text) {
        return (Volume) parse(Kind.VOLUME, text);
    }

    public static Seconds seconds(String text) {
        return (Seconds) parse(Kind.TIME, text);
    }

    public static Temperature temperature(String text) {
        return (Temperature) parse(Kind.TEMPERATURE, text);
    }

    public static Ratio ratio(String text) {
        return (Ratio) parse(Kind.RATIO, text);
    }

    /** The loss of hose, {@code 9.19 ± 0.21 psi / 100 ft @ 100 gpm}; any pair of length and flow will do. */
    public static Known<HoseLoss> hoseLoss(String text) {
        QuantityCursor cursor = new QuantityCursor("hose loss", text, HOSE_LOSS);
        Decimal number = cursor.number();
        Optional<Decimal> error = cursor.plusMinus();
        Pressure one = new Pressure(cursor.unit(Kind.PRESSURE).size());
        cursor.expect("/");
        Length over = new Length(plain(cursor, Kind.LENGTH, text));
        cursor.expect("@");
        Flow at = new Flow(plain(cursor, Kind.FLOW, text));
        cursor.end();
        double size = HoseLoss.of(one, over, at).r();
        HoseLoss value = Plausible.check(new HoseLoss(number.times(size)), text);
        return new Known<>(value, error.map(e -> new HoseLoss(e.times(size))));
    }

    /** The loss of piping or an appliance, {@code 2.06 ± 1.0 psi @ 100 gpm}. */
    public static Known<PointLoss> pointLoss(String text) {
        QuantityCursor cursor = new QuantityCursor("loss", text, POINT_LOSS);
        Decimal number = cursor.number();
        Optional<Decimal> error = cursor.plusMinus();
        Pressure one = new Pressure(cursor.unit(Kind.PRESSURE).size());
        cursor.expect("@");
        Flow at = new Flow(plain(cursor, Kind.FLOW, text));
        cursor.end();
        double size = PointLoss.of(one, at).k();
        PointLoss value = Plausible.check(new PointLoss(number.times(size)), text);
        return new Known<>(value, error.map(e -> new PointLoss(e.times(size))));
    }

    /** The rated point of a fog tip, {@code 150 gpm @ 75 psi}. */
    public static RatedPoint ratedPoint(String text) {
        QuantityCursor cursor = new QuantityCursor("rated point", text, RATED);
        Flow flow = new Flow(plain(cursor, Kind.FLOW, text));
        cursor.expect("@");
        Pressure at = new Pressure(plain(cursor, Kind.PRESSURE, text));
        cursor.end();
        return new RatedPoint(flow, at);
    }

    /** A rule of thumb, {@code 18 psi / 100 ft}. */
    public static LossByLength lossByLength(String text) {
        QuantityCursor cursor = new QuantityCursor("loss by length", text, BY_LENGTH);
        Pressure loss = new Pressure(plain(cursor, Kind.PRESSURE, text));
        cursor.expect("/");
        Length over = new Length(plain(cursor, Kind.LENGTH, text));
        cursor.end();
        return new LossByLength(loss, over);
    }

    private static double plain(QuantityCursor cursor, Kind kind, String text) {
        Decimal number = cursor.number();
        return Plausible.check(kind, number.times(cursor.unit(kind)), text);
    }
}
