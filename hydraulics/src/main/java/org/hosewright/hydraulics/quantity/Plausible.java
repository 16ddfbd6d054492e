package org.hosewright.hydraulics.quantity;

import org.hosewright.hydraulics.error.InvalidInput;

/** The bounds beyond which a written value is a slip of the pen, by kind.
 *
 * <p>They are wide: what a hose, a tip or a pump may see is judged elsewhere. Each constant says why it stands where it does.
 */
final class Plausible {
    /** A perfect vacuum is -14.7 psi. */
    static final double LEAST_PRESSURE_PSI = -15;

    /** Twice what high-pressure pumps and their hose are tested to. */
    static final double MOST_PRESSURE_PSI = 1500;

    /** Above the largest mobile pumping systems. */
    static final double MOST_FLOW_GPM = 20_000;

    /** A rise downhill, further than any pump is set above its tips. */
    static final double LEAST_LENGTH_FT = -5_000;

    /** A relay of nineteen miles. */
    static final double MOST_LENGTH_FT = 100_000;

    /** Many times the reaction of a large monitor, 502 lbf from a 2 in tip at 80 psi. */
    static final double MOST_FORCE_LBF = 20_000;

    /** A large storage tank. */
    static final double MOST_VOLUME_GAL = 10_000_000;

    /** One day. */
    static final double MOST_TIME_S = 86_400;

    /** Colder than any drill night. */
    static final double LEAST_TEMPERATURE_C = -60;

    /** Water boils. */
    static final double MOST_TEMPERATURE_C = 100;

    /** A share taken from the whole and then some. */
    static final double LEAST_SHARE_PERCENT = -100;

    /** Ten times the whole. */
    static final double MOST_SHARE_PERCENT = 1_000;

    /** Ten times the coefficient of 3/4 in booster hose, 1100. */
    static final double MOST_HOSE_LOSS_US = 11_000;

    /** At 100 gpm a piece that loses this passes next to nothing. */
    static final double MOST_POINT_LOSS_US = 1_500;

    private Plausible() {}

    /** A value in SI, where it lies within the bounds of its kind. */
    static double check(Kind kind, double si, String written) {
        Bounds bounds = of(kind);
        if (!(si >= bounds.unit.toSi(bounds.least) && si <= bounds.unit.toSi(bounds.most))) {
            throw refused(kind.word(), written, bounds, bounds.unit.symbol());
        }
        return si;
    }

    static HoseLoss check(HoseLoss loss, String written) {
        Bounds bounds = new Bounds(0, MOST_HOSE_LOSS_US, Unit.PSI);
        if (!(loss.us() >= bounds.least && loss.us() <= bounds.most)) {
            throw refused("hose loss", written, bounds, "psi / 100 ft @ 100 gpm");
        }
        return loss;
    }

    static PointLoss check(PointLoss loss, String written) {
        Bounds bounds = new Bounds(0, MOST_POINT_LOSS_US, Unit.PSI);
        if (!(loss.us() >= bounds.least && loss.us() <= bounds.most)) {
            throw refused("loss", written, bounds, "psi @ 100 gpm");
        }
        return loss;
    }

    private static InvalidInput refused(String what, String written, Bounds bounds, String unit) {
        String would = Numbers.plain(bounds.least) + " to " + Numbers.plain(bounds.most) + " " + unit;
        return new InvalidInput(what, written, would, "");
    }

    private static Bounds of(Kind kind) {
        return switch (kind) {
            case PRESSURE -> new Bounds(LEAST_PRESSURE_PSI, MOST_PRESSURE_PSI, Unit.PSI);
            case FLOW -> new Bounds(0, MOST_FLOW_GPM, Unit.GPM);
            case LENGTH -> new Bounds(LEAST_LENGTH_FT, MOST_LENGTH_FT, Unit.FT);
            case FORCE -> new Bounds(0, MOST_FORCE_LBF, Unit.LBF);
            case VOLUME -> new Bounds(0, MOST_VOLUME_GAL, Unit.GAL);
            case TIME -> new Bounds(0, MOST_TIME_S, Unit.S);
            case TEMPERATURE -> new Bounds(LEAST_TEMPERATURE_C, MOST_TEMPERATURE_C, Unit.C);
            case RATIO -> new Bounds(LEAST_SHARE_PERCENT, MOST_SHARE_PERCENT, Unit.PERCENT);
        };
    }

    private record Bounds(double least, double most, Unit unit) {}
}
