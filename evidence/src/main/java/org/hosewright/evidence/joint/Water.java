package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;

/** How much water a reading had running, and at what pressure at the tip, from its latent values.
 *
 * <p>The first latent value is the logarithm of the total pressure at the tip [Pa]; where the tip does not tell the flow, the
 * second is the logarithm of the flow [m3/s].
 *
 * @param kind how the flow follows
 * @param rate flow for the square root of pressure [m3/s per sqrt(Pa)]; 1 where unused
 * @param factors unknowns whose logarithms add to that of the flow
 */
record Water(Kind kind, double rate, List<Integer> factors) {
    /** How the flow follows from the pressure at the tip. */
    enum Kind {
        /** As from an orifice. */
        ORIFICE,
        /** Not at all: an automatic tip. */
        FREE,
        /** There is none: the nozzle is shut. */
        NONE
    }

    Water {
        factors = List.copyOf(factors);
    }

    int latents() {
        return kind == Kind.FREE ? 2 : 1;
    }

    Water withFactor(int unknown) {
        List<Integer> more = new ArrayList<>(factors);
        more.add(unknown);
        return new Water(kind, rate, more);
    }

    double pressure_Pa(double[] latents) {
        return Math.exp(latents[0]);
    }

    /** Logarithm of the flow [m3/s]. */
    double logFlow(Unknowns all, double[] u, double[] latents) {
        if (kind == Kind.FREE) {
            return latents[1];
        }
        double sum = Math.log(rate) + latents[0] / 2;
        for (int factor : factors) {
            sum += all.get(factor).logarithm(u[factor]);
        }
        return sum;
    }

    /** Square of the flow [m6/s2]. */
    double flowSquared(Unknowns all, double[] u, double[] latents) {
        return kind == Kind.NONE ? 0 : Math.exp(2 * logFlow(all, u, latents));
    }

    /** Adds what a form owes to the logarithm of the flow.
     *
     * @param slope derivative of the form by that logarithm
     */
    void pass(double slope, Unknowns all, Slopes into) {
        if (kind == Kind.FREE) {
            into.byLatent(1, slope);
        } else if (kind == Kind.ORIFICE) {
            into.byLatent(0, slope / 2);
            for (int factor : factors) {
                into.byUnknown(factor, slope * all.get(factor).deviation());
            }
        }
    }
}
