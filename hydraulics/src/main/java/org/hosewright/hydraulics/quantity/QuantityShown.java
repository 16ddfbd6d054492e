package org.hosewright.hydraulics.quantity;

import java.util.Optional;

/** Quantities written for people and for files, in the units of a company.
 *
 * <p>For people {@code ±} is the 95 % half-width and the minus is a true one; in files {@code ±} is the standard error.
 */
public final class QuantityShown {
    /** Half-width of a 95 % interval in standard errors. @source the normal distribution, two-sided 5 % */
    public static final double HALF_WIDTH = 1.959964;

    private static final QuantityShown US = new QuantityShown(UnitSystem.US);
    private static final QuantityShown SI = new QuantityShown(UnitSystem.SI);

    /** Sizes are held to a fraction of an inch that is this near [in]: below what a bore gauge tells. */
    private static final double FRACTION_OFF = 5e-4;

    /** Below this a length is shown in inches or millimetres [m]. */
    private static final double SMALL_M = 0.3;

    private static final int ACCEPTED_DIGITS = 3;

    private final UnitSystem system;

    private QuantityShown(UnitSystem system) {
        this.system = system;
    }

    public static QuantityShown us() {
        return US;
    }

    public static QuantityShown si() {
        return SI;
    }

    public static QuantityShown of(UnitSystem system) {
        return system == UnitSystem.US ? US : SI;
    }

    /** In the units of both systems, where nobody knows who reads it: "87 psi (600 kPa)". */
    public static String both(Quantity quantity) {
        return US.text(quantity) + " (" + SI.text(quantity) + ")";
    }

    public UnitSystem units() {
        return system;
    }

    /** Number and unit: "103 psi", "550 ft", "1 3/4 in", "9.19 psi per 100 ft at 100 gpm". */
    public String text(Quantity quantity) {
        if (quantity instanceof Length length && length.metres() != 0 && Math.abs(length.metres()) < SMALL_M) {
            return size(length);
        }
        if (quantity instanceof Seconds seconds) {
            return time(seconds);
        }
        if (quantity instanceof Volume volume) {
            return volume(volume);
        }
        double value = value(quantity);
        return minus(Numbers.trimmed(Numbers.fixed(value, natural(quantity, value)))) + " " + words(quantity);
    }

    /** A bore or a diameter: "7/8 in", "1.88 in", "45 mm". */
    public String size(Length length) {
        if (system == UnitSystem.SI) {
            return minus(Numbers.trimmed(Numbers.fixed(length.millimetres(), 1))) + " mm";
        }
        Optional<String> fraction = Inches.find(length.inches(), FRACTION_OFF);
        return (fraction.isPresent() ? fraction.get() : minus(Numbers.trimmed(Numbers.fixed(length.inches(), 2))))
                + " in";
    }

    /** A rise: "20 ft up", "8 ft down", "level". */
    public String rise(Length rise) {
        double value = system.length().ofSi(rise.metres());
        String number = Numbers.trimmed(Numbers.fixed(Math.abs(value), Decimals.plain(value)));
        if (number.equals("0")) {
            return "level";
        }
        return number + " " + system.length().symbol() + (value > 0 ? " up" : " down");
    }

    /** A velocity: "16 ft/s", "4.9 m/s". */
    public String velocity(double velocity_ms) {
        boolean us = system == UnitSystem.US;
        double value = us ? velocity_ms / Constants.FOOT_M : velocity_ms;
        String number = Numbers.trimmed(Numbers.fixed(value, us || Math.abs(value) >= 100 ? 0 : 1));
        return minus(number) + (us ? " ft/s" : " m/s");
    }

    /** Number, unit and the 95 % half-width: "103 psi ± 2"; the number alone where nobody said how well it is known. */
    public String withBand(Known<?> known) {
        Quantity quantity = known.value();
        double half = HALF_WIDTH * known.standardErrorSi() * perSi(quantity);
        if (!(half > 0)) {
            return text(quantity);
        }
        double value = value(quantity);
        int decimals = Decimals.known(natural(quantity, value), half);
        String number = minus(Numbers.fixed(value, decimals));
        String band = " ± " + Decimals.half(half, decimals);
        boolean loss = quantity instanceof HoseLoss || quantity instanceof PointLoss;
        return loss ? number + band + " " + words(quantity) : number + " " + words(quantity) + band;
    }

    /** The same loss said at another flow: "24.0 ± 1.0 psi per 100 ft at 161 gpm". */
    public String hoseLossAt(Known<HoseLoss> known, Flow flow) {
        Length over = system == UnitSystem.US ? Length.ofFeet(100) : Length.ofMetres(100);
        double share = known.value().over(over, flow).pascals();
        double error = new HoseLoss(known.standardErrorSi()).over(over, flow).pascals();
        return lossAt(share, error) + " per " + text(over) + " at " + text(flow);
    }

    /** The same loss said at another flow: "3.9 ± 2.7 psi at 161 gpm". */
    public String pointLossAt(Known<PointLoss> known, Flow flow) {
        double loss = known.value().at(flow).pascals();
        double error = new PointLoss(known.standardErrorSi()).at(flow).pascals();
        return lossAt(loss, error) + " at " + text(flow);
    }

    /** A factor said as a change: 1.06 is "+6 % ± 2". */
    public String change(Known<Ratio> factor) {
        double percent = 100 * (factor.value().value() - 1);
        double half = 100 * HALF_WIDTH * factor.standardErrorSi();
        int decimals = half > 0 ? Decimals.known(Decimals.plain(percent), half) : Decimals.plain(percent);
        String number = minus(Numbers.fixed(percent, decimals));
        boolean plus = percent > 0 && !Numbers.fixed(percent, decimals).equals(Numbers.fixed(0, decimals));
        return (plus ? "+" : "") + number + " %" + (half > 0 ? " ± " + Decimals.half(half, decimals) : "");
    }

    /** For a file, in a unit; reads back exactly. Inches become fractions where they are some. */
    public String file(Quantity quantity, Unit unit) {
        return FileText.of(quantity, unit);
    }

    /** For a file, with its standard error; reads back exactly. */
    public String fileText(Known<?> known) {
        return FileText.of(known, system);
    }

    /** For a file that people read: the standard error to three digits, the value no finer. */
    public String fileTextRounded(Known<?> known) {
        return FileText.rounded(known, system, ACCEPTED_DIGITS);
    }

    private String lossAt(double loss_Pa, double error_Pa) {
        double loss = system.pressure().ofSi(loss_Pa);
        double half = HALF_WIDTH * system.pressure().ofSi(error_Pa);
        int natural = Decimals.significant(loss, 3);
        if (!(half > 0)) {
            return Numbers.trimmed(Numbers.fixed(loss, natural)) + " "
                    + system.pressure().symbol();
        }
        int decimals = Decimals.known(natural, half);
        return Numbers.fixed(loss, decimals) + " ± " + Decimals.half(half, decimals) + " "
                + system.pressure().symbol();
    }

    private double value(Quantity quantity) {
        return quantity instanceof Ratio ratio ? 100 * ratio.value() : system.show(quantity);
    }

    private double perSi(Quantity quantity) {
        if (quantity instanceof HoseLoss || quantity instanceof PointLoss) {
            return system.show(quantity instanceof HoseLoss ? new HoseLoss(1) : new PointLoss(1));
        }
        return 1 / system.unit(quantity).size();
    }

    private static int natural(Quantity quantity, double value) {
        boolean loss = quantity instanceof HoseLoss || quantity instanceof PointLoss;
        return loss ? Decimals.significant(value, 3) : Decimals.plain(value);
    }

    private String words(Quantity quantity) {
        boolean us = system == UnitSystem.US;
        if (quantity instanceof HoseLoss) {
            return us ? "psi per 100 ft at 100 gpm" : "kPa per 100 m at 100 L/min";
        }
        if (quantity instanceof PointLoss) {
            return us ? "psi at 100 gpm" : "kPa at 100 L/min";
        }
        return system.unit(quantity).symbol();
    }

    /** Water is not known finer than to three digits. */
    private String volume(Volume volume) {
        double value = value(volume);
        int decimals = Decimals.plain(value);
        double step = Decimal.shift(1, Math.max(-decimals, ExactText.exponent(Math.abs(value)) - 2));
        double rounded = value == 0 ? 0 : Numbers.toNearest(value, step);
        return minus(Numbers.trimmed(Numbers.fixed(rounded, decimals))) + " " + words(volume);
    }

    private static String time(Seconds time) {
        double whole = Numbers.toNearest(time.seconds(), 1);
        if (Math.abs(time.seconds()) < 120) {
            return minus(Numbers.trimmed(Numbers.fixed(time.seconds(), Decimals.plain(time.seconds())))) + " s";
        }
        double minutes = Math.floor(Math.abs(whole) / 60);
        double rest = Math.abs(whole) - 60 * minutes;
        String sign = whole < 0 ? "\u2212" : "";
        return sign + Numbers.fixed(minutes, 0) + " min" + (rest > 0 ? " " + Numbers.fixed(rest, 0) + " s" : "");
    }

    private static String minus(String number) {
        return number.startsWith("-") ? "\u2212" + number.substring(1) : number;
    }
}
