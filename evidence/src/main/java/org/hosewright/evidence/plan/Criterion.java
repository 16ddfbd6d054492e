package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.fit.Triangle;

/** What a list of readings is judged by; less is better, infinite where something is not known at all.
 *
 * @source A. C. Atkinson, A. N. Donev, Optimum Experimental Designs, 1992: D-optimality, and I-optimality (there V) as the mean
 *     variance of what is foretold
 */
interface Criterion {
    double of(Triangle information);

    /** The sum of the variances of linear forms. */
    static Criterion ofVariances(List<double[]> forms) {
        List<double[]> kept = new ArrayList<>(forms);
        return information -> {
            if (!information.isRegular()) {
                return Double.POSITIVE_INFINITY;
            }
            double[][] covariance = information.covariance();
            double sum = 0;
            for (double[] form : kept) {
                sum += Minimum.quadratic(form, covariance);
            }
            return sum;
        };
    }

    /** The logarithm of the determinant of the information, with its sign turned. */
    static Criterion ofDeterminant() {
        return information -> information.isRegular() ? -information.logDeterminant() : Double.POSITIVE_INFINITY;
    }
}
