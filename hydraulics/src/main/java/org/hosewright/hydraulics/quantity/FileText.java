package org.hosewright.hydraulics.quantity;

import java.util.Optional;

/** Quantities as the open files hold them: text that {@link QuantityText} reads back exactly. */
final class FileText {
    private static final double US_HOSE = HoseLoss.ofUs(1).r();
    private static final double SI_HOSE = HoseLoss.ofSi(1).r();
    private static final double US_POINT = PointLoss.ofUs(1).k();
    private static final double SI_POINT = PointLoss.ofSi(1).k();

    private FileText() {}

    static String of(Quantity quantity, Unit unit) {
        if (unit == Unit.IN) {
            Optional<String> fraction = Inches.find(Unit.IN.ofSi(quantity.si()), 1e-12);
            if (fraction.isPresent()) {
                String text = fraction.get() + " in";
                if (QuantityText.length(text).si() == quantity.si()) {
                    return text;
                }
            }
        }
        return ExactText.of(quantity.si(), Scale.of(unit)) + " " + unit.symbol();
    }

    /** Value and standard error, to the last bit. */
    static String of(Known<?> known, UnitSystem system) {
        Scale scale = scale(known.value(), system);
        String error = known.standardError().isPresent()
                ? " ± " + ExactText.of(known.standardErrorSi(), Scale.of(scale.size()))
                : "";
        return ExactText.of(known.value().si(), scale) + error + " " + words(known.value(), system);
    }

    /** Value and standard error, the error to so many significant digits and the value no finer. */
    static String rounded(Known<?> known, UnitSystem system, int digits) {
        Scale scale = scale(known.value(), system);
        double error = known.standardErrorSi() / scale.size();
        if (!(error > ExactText.TINY)) {
            return of(known, system);
        }
        int decimals = Math.max(0, Math.min(6, digits - 1 - ExactText.exponent(error)));
        String value = Numbers.fixed(scale.ofSi(known.value().si()), decimals);
        return value + " ± " + Numbers.fixed(error, decimals) + " " + words(known.value(), system);
    }

    private static Scale scale(Quantity quantity, UnitSystem system) {
        boolean us = system == UnitSystem.US;
        if (quantity instanceof HoseLoss) {
            return Scale.of(us ? US_HOSE : SI_HOSE);
        }
        if (quantity instanceof PointLoss) {
            return Scale.of(us ? US_POINT : SI_POINT);
        }
        return Scale.of(system.unit(quantity));
    }

    private static String words(Quantity quantity, UnitSystem system) {
        boolean us = system == UnitSystem.US;
        if (quantity instanceof HoseLoss) {
            return us ? "psi / 100 ft @ 100 gpm" : "kPa / 100 m @ 100 L/min";
        }
        if (quantity instanceof PointLoss) {
            return us ? "psi @ 100 gpm" : "kPa @ 100 L/min";
        }
        return system.unit(quantity).symbol();
    }
}
