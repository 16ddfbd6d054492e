package org.hosewright.hydraulics.lay;

import java.util.Optional;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.method.CoefficientMethod;
import org.hosewright.hydraulics.method.HandMethod;
import org.hosewright.hydraulics.method.LossMethod;
import org.hosewright.hydraulics.method.NMethod;
import org.hosewright.hydraulics.method.SquareMethod;
import org.hosewright.hydraulics.method.SubtractTen;
import org.hosewright.hydraulics.method.UnderwritersMethod;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** The trade's ways to a hose's loss, each for the sizes of hose that it is taught for. */
public enum TradeMethod {
    COEFFICIENT("coefficient"),
    CONDENSED("condensed"),
    HAND("hand"),
    SUBTRACT_TEN("subtract ten"),
    N("N method"),
    UNDERWRITERS("2Q\u00b2 + Q");

    /** How near a size counts as it [in]. */
    private static final double SAME_IN = 0.02;

    private final String word;

    TradeMethod(String word) {
        this.word = word;
    }

    /** Its name. */
    public String word() {
        return word;
    }

    /** Its rule for a hose; absent for a size that it is not taught for, or where the hose has no coefficient. */
    Optional<LossMethod> findRule(Hose hose) {
        return switch (this) {
            case COEFFICIENT -> coefficient(hose);
            case CONDENSED -> condensed(hose);
            case HAND ->
                is(hose, 2.5)
                        ? Optional.of(HandMethod.TWO_AND_HALF_INCH)
                        : is(hose, 1.75) ? Optional.of(HandMethod.ONE_AND_THREE_QUARTER_INCH) : Optional.empty();
            case SUBTRACT_TEN -> is(hose, 2.5) ? Optional.of(new SubtractTen()) : Optional.empty();
            case N -> n(hose);
            case UNDERWRITERS -> is(hose, 2.5) ? Optional.of(new UnderwritersMethod()) : Optional.empty();
        };
    }

    /** Why it has no rule for a hose. */
    String without(Hose hose, QuantityShown shown) {
        return hose.law().isPresent() && this == COEFFICIENT
                ? hose.id() + " has no coefficient: it goes by "
                        + hose.law().get().says() + "."
                : "It is not taught for " + shown.size(hose.diameter()) + " hose (" + hose.id() + ").";
    }

    private static Optional<LossMethod> coefficient(Hose hose) {
        return hose.law().isPresent()
                ? Optional.empty()
                : Optional.of(new CoefficientMethod(hose.loss().value()));
    }

    private static Optional<LossMethod> condensed(Hose hose) {
        if (is(hose, 2.5)) {
            return Optional.of(SquareMethod.TWO_AND_HALF_INCH);
        }
        if (is(hose, 3)) {
            return Optional.of(SquareMethod.THREE_INCH);
        }
        if (is(hose, 3.5)) {
            return Optional.of(SquareMethod.THREE_AND_HALF_INCH);
        }
        if (is(hose, 4)) {
            return Optional.of(SquareMethod.FOUR_INCH);
        }
        return is(hose, 5) ? Optional.of(SquareMethod.FIVE_INCH) : Optional.empty();
    }

    private static Optional<LossMethod> n(Hose hose) {
        if (is(hose, 1.5)) {
            return Optional.of(NMethod.ONE_AND_HALF_INCH);
        }
        if (is(hose, 1.75)) {
            return Optional.of(NMethod.ONE_AND_THREE_QUARTER_INCH);
        }
        if (is(hose, 2)) {
            return Optional.of(NMethod.TWO_INCH);
        }
        return is(hose, 2.5) ? Optional.of(NMethod.TWO_AND_HALF_INCH) : Optional.empty();
    }

    private static boolean is(Hose hose, double inches) {
        return Math.abs(hose.diameter().inches() - inches) <= SAME_IN;
    }
}
