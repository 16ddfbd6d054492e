package org.hosewright.evidence.pool;

import org.hosewright.hydraulics.network.sparse.Pattern;
import org.hosewright.hydraulics.network.sparse.SymmetricFactor;
import org.hosewright.hydraulics.network.sparse.SymmetricInverse;

/** A linear problem solved with given spreads. */
final class Solved {
    private final Pattern pattern;
    private final SymmetricFactor factor;
    private final double[] solution;
    private final double likelihood;

    Solved(Mixed problem, SymmetricFactor factor, double[] solution, double likelihood) {
        this.pattern = problem.pattern();
        this.factor = factor;
        this.solution = solution;
        this.likelihood = likelihood;
    }

    /** Natural logarithm of the restricted likelihood of the spreads, but for a constant.
     *
     * @source H. Patterson and R. Thompson, Recovery of inter-block information when block sizes are unequal, 1971
     */
    double likelihood() {
        return likelihood;
    }

    /** How many unknowns it has. */
    int size() {
        return solution.length;
    }

    /** The likeliest value of an unknown. */
    double mean(int unknown) {
        return solution[pattern.place(unknown)];
    }

    /** The variances of all unknowns. */
    double[] variances() {
        SymmetricInverse inverse = factor.inverse();
        double[] variances = new double[solution.length];
        for (int unknown = 0; unknown < variances.length; unknown++) {
            int place = pattern.place(unknown);
            variances[unknown] = inverse.at(place, place);
        }
        return variances;
    }

    /** The covariances of all unknowns with one of them. */
    double[] covariances(int with) {
        double[] byPlace = new double[solution.length];
        byPlace[pattern.place(with)] = 1;
        factor.solve(byPlace);
        double[] covariances = new double[byPlace.length];
        for (int unknown = 0; unknown < covariances.length; unknown++) {
            covariances[unknown] = byPlace[pattern.place(unknown)];
        }
        return covariances;
    }
}
