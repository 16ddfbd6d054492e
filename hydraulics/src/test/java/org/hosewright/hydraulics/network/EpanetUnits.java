package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.network.law.DarcyWeisbach;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.law.Power;
import org.hosewright.hydraulics.network.law.PumpGain;
import org.hosewright.hydraulics.network.law.Square;
import org.hosewright.hydraulics.network.law.Water;

/** The reference's units, constants and laws, in ours: it reckons in feet and cubic feet per second.
 *
 * <p>Source of the constants: EPANET 2.3, the program's own source (hydraulic coefficients and unit conversions).
 */
final class EpanetUnits {
    static final double PA_PER_PSI = 6894.757293168361;

    private static final double M_PER_FT = 0.3048;
    private static final double M3S_PER_CFS = M_PER_FT * M_PER_FT * M_PER_FT;
    private static final double GPM_PER_CFS = 448.831;
    private static final double PSI_PER_FT = 0.4333;
    private static final double PA_PER_FT = PSI_PER_FT * PA_PER_PSI;
    private static final double FT_PER_IN = 1 / 12.0;

    /** Standard gravity as the program has it [ft/s2]. */
    private static final double GRAVITY = 32.2;

    /** Hazen-Williams in feet and cubic feet per second, with its exponents of flow and of diameter. */
    private static final double HAZEN_WILLIAMS = 4.727;

    private static final double OF_DIAMETER = 4.871;

    /** Minor loss in feet and cubic feet per second: 8 / (pi^2 g), rounded. */
    private static final double MINOR = 0.02517;

    /** Kinematic viscosity [ft2/s]. */
    private static final double VISCOSITY = 1.1e-5;

    private static final Water WATER =
            new Water(PA_PER_FT / M_PER_FT / (GRAVITY * M_PER_FT), VISCOSITY * M_PER_FT * M_PER_FT);

    private EpanetUnits() {}

    static double head_Pa(double head_ft) {
        return head_ft * PA_PER_FT;
    }

    static double psi(double head_Pa) {
        return head_Pa / PA_PER_PSI;
    }

    static double flow_m3s(double flow_gpm) {
        return flow_gpm / GPM_PER_CFS * M3S_PER_CFS;
    }

    static double gpm(double flow_m3s) {
        return flow_m3s / M3S_PER_CFS * GPM_PER_CFS;
    }

    /** A pipe by Hazen and Williams; length [ft], diameter [in]. */
    static Law hazenWilliams(double length, double diameter, double roughness, double minor) {
        double n = Power.HAZEN_WILLIAMS;
        double size_ft = diameter * FT_PER_IN;
        double r = HAZEN_WILLIAMS * length / Math.pow(roughness, n) / Math.pow(size_ft, OF_DIAMETER);
        return new Power(r * PA_PER_FT / Math.pow(M3S_PER_CFS, n), n, minor(diameter, minor));
    }

    /** A pipe by Darcy and Weisbach; length [ft], diameter [in], roughness [thousandths of a foot]. */
    static Law darcyWeisbach(double length, double diameter, double roughness, double minor) {
        double exact = 8 / (Math.PI * Math.PI * GRAVITY);
        return new DarcyWeisbach(
                length * M_PER_FT,
                diameter * FT_PER_IN * M_PER_FT,
                roughness / 1000 * M_PER_FT,
                minor * MINOR / exact,
                WATER);
    }

    /** A throttled valve, the exact quadratic that stands for hose; diameter [in]. */
    static Law hose(double diameter, double loss) {
        return new Square(minor(diameter, loss));
    }

    /** A tip that flows so many gpm at the root of one psi, and sucks no air. */
    static Law tip(double factor) {
        return new OneWay(Square.ofOutlet(flow_m3s(factor) / Math.sqrt(PA_PER_PSI)));
    }

    /** A pump with a check valve: head at no flow [ft], then two more points of its curve, flow [gpm] and head [ft]. */
    static Law pump(double... points) {
        return new OneWay(PumpGain.through(
                head_Pa(points[0]), head_Pa(points[2]), flow_m3s(points[1]), head_Pa(points[4]), flow_m3s(points[3])));
    }

    private static double minor(double diameter, double factor) {
        return MINOR * factor / Math.pow(diameter * FT_PER_IN, 4) * PA_PER_FT / (M3S_PER_CFS * M3S_PER_CFS);
    }
}
