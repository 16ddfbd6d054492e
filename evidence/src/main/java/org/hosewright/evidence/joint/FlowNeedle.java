package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;

/** A flow meter in a line: what it should show, by the logarithm.
 *
 * @param factors unknowns whose weighted logarithms stand between the true flow and what it shows
 * @param read logarithm of what it showed [m3/s]
 * @param deviation expected scatter of that logarithm
 */
record FlowNeedle(List<Term> factors, double read, double deviation) {
    FlowNeedle {
        factors = List.copyOf(factors);
    }

    FlowNeedle withFactor(Term factor) {
        List<Term> more = new ArrayList<>(factors);
        more.add(factor);
        return new FlowNeedle(more, read, deviation);
    }

    /** The logarithm that it should show; the derivatives go along. */
    double shows(Water water, Unknowns all, double[] u, double[] latents, Slopes slopes) {
        double shown = water.logFlow(all, u, latents);
        water.pass(1, all, slopes);
        for (Term factor : factors) {
            Unknown unknown = all.get(factor.unknown());
            shown += factor.weight() * unknown.logarithm(u[factor.unknown()]);
            slopes.byUnknown(factor.unknown(), factor.weight() * unknown.deviation());
        }
        return shown;
    }
}
