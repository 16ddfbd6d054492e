package org.hosewright.hydraulics.network.law;

/** The Darcy friction factor: laminar below Reynolds 2000, Swamee-Jain from 4000, Dunlop's cubic between.
 *
 * <p>The cubic meets both ends in value and in slope, so the loss has no jump.
 *
 * @source L. Rossman et al., EPANET 2.2 User Manual, EPA, 2020, appendix D.1 (Swamee and Jain; Dunlop 1991)
 */
final class FrictionFactor {
    private static final double LAMINAR = 2000;
    private static final double TURBULENT = 4000;

    /** Numbers of Swamee and Jain: f = 0.25 / log10(e/(3.7 d) + 5.74/Re^0.9)^2. */
    private static final double SMOOTH = 5.74;

    private static final double SMOOTH_POWER = 0.9;
    private static final double ROUGH = 3.7;
    private static final double LN_10 = 2.302585092994046;

    private FrictionFactor() {}

    /** The factor [1].
     *
     * @param reynolds above 0
     * @param roughness roughness over diameter [1]
     */
    static double of(double reynolds, double roughness) {
        if (reynolds <= LAMINAR) {
            return 64 / reynolds;
        }
        double inner = inner(Math.max(reynolds, TURBULENT), roughness);
        return reynolds >= TURBULENT ? turbulent(inner) : cubic(inner, reynolds / LAMINAR);
    }

    /** How fast the factor grows with the Reynolds number [1]. */
    static double byReynolds(double reynolds, double roughness) {
        if (reynolds <= LAMINAR) {
            return -64 / (reynolds * reynolds);
        }
        double inner = inner(Math.max(reynolds, TURBULENT), roughness);
        if (reynolds < TURBULENT) {
            return cubicSlope(inner, reynolds / LAMINAR) / LAMINAR;
        }
        return byInner(inner) * -SMOOTH_POWER * SMOOTH * Math.pow(reynolds, -SMOOTH_POWER - 1);
    }

    /** How fast the factor grows with roughness over diameter [1]. */
    static double byRoughness(double reynolds, double roughness) {
        if (reynolds <= LAMINAR) {
            return 0;
        }
        double inner = inner(Math.max(reynolds, TURBULENT), roughness);
        if (reynolds >= TURBULENT) {
            return byInner(inner) / ROUGH;
        }
        double r = reynolds / LAMINAR;
        double fa = byInner(inner);
        double y3 = logarithm(inner);
        double share = edge() / (inner * y3);
        double fb = (2 + share) * fa - turbulent(inner) * share * (1 / inner + -2 / (LN_10 * inner * y3));
        return (7 * fa - fb + r * (-17 * fa + 2.5 * fb + r * (13 * fa - 2 * fb + r * (-3 * fa + 0.5 * fb)))) / ROUGH;
    }

    private static double inner(double reynolds, double roughness) {
        return roughness / ROUGH + SMOOTH / Math.pow(reynolds, SMOOTH_POWER);
    }

    private static double logarithm(double inner) {
        return -2 / LN_10 * Math.log(inner);
    }

    private static double turbulent(double inner) {
        double root = logarithm(inner);
        return 1 / (root * root);
    }

    private static double byInner(double inner) {
        double root = logarithm(inner);
        return 4 / (LN_10 * inner * root * root * root);
    }

    /** Slope of the turbulent end over its value is this over inner times logarithm, less 0. */
    private static double edge() {
        return -4 * SMOOTH_POWER / LN_10 * SMOOTH / Math.pow(TURBULENT, SMOOTH_POWER);
    }

    private static double cubic(double inner, double r) {
        double fa = turbulent(inner);
        double fb = (2 + edge() / (inner * logarithm(inner))) * fa;
        double x1 = 7 * fa - fb;
        double x2 = 0.128 - 17 * fa + 2.5 * fb;
        double x3 = -0.128 + 13 * fa - 2 * fb;
        double x4 = 0.032 - 3 * fa + 0.5 * fb;
        return x1 + r * (x2 + r * (x3 + r * x4));
    }

    private static double cubicSlope(double inner, double r) {
        double fa = turbulent(inner);
        double fb = (2 + edge() / (inner * logarithm(inner))) * fa;
        double x2 = 0.128 - 17 * fa + 2.5 * fb;
        double x3 = -0.128 + 13 * fa - 2 * fb;
        double x4 = 0.032 - 3 * fa + 0.5 * fb;
        return x2 + r * (2 * x3 + r * 3 * x4);
    }
}
