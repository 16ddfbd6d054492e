package org.hosewright.evidence.plan;

import org.hosewright.evidence.fit.Minimum;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** A number that is sought: how it hangs on the unknowns, and the step that one decides in. */
final class Sought {
    private final double[] steps;

    /** Makes it.
     *
     * @param form its slopes by the unknowns
     * @param step how much of it makes a difference to a decision; in the same unit, above 0
     */
    Sought(double[] form, double step) {
        this.steps = form.clone();
        for (int i = 0; i < steps.length; i++) {
            steps[i] /= step;
        }
    }

    /** A copy of its slopes, in steps. */
    double[] form() {
        return steps.clone();
    }

    /** Its standard error, in steps. */
    double deviation(double[][] covariance) {
        return Math.sqrt(Math.max(0, Minimum.quadratic(steps, covariance)));
    }

    /** True where its 95 % half-width is a step at most. */
    boolean isAnswered(double[][] covariance) {
        return QuantityShown.HALF_WIDTH * deviation(covariance) <= 1;
    }
}
