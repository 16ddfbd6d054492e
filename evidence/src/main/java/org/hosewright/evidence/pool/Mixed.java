package org.hosewright.evidence.pool;

import java.util.List;
import org.hosewright.hydraulics.network.sparse.Pattern;
import org.hosewright.hydraulics.network.sparse.SymmetricFactor;

/** A linear problem some of whose deviations are sought: unknowns, equations, and the spreads that these share.
 *
 * <p>Its matrix is kept once for each spread and added up for any of their values, so that many values cost little more
 * than one factor each.
 */
final class Mixed {
    private final int spreads;
    private final List<Equation> equations;
    private final Pattern pattern;
    private final Share[] shares;

    /** A problem.
     *
     * @param size how many unknowns
     * @param spreads how many spreads
     */
    Mixed(int size, int spreads, List<Equation> equations) {
        this.spreads = spreads;
        this.equations = List.copyOf(equations);
        pattern = Pattern.of(size, ends(equations));
        shares = new Share[spreads + 1];
        for (int s = 0; s <= spreads; s++) {
            shares[s] = new Share(pattern.size(), pattern.entries());
        }
        equations.forEach(equation -> share(equation.spread()).add(equation, pattern));
    }

    /** How many spreads it has. */
    int spreads() {
        return spreads;
    }

    List<Equation> equations() {
        return equations;
    }

    Pattern pattern() {
        return pattern;
    }

    /** The problem solved with given spreads.
     *
     * @param logs natural logarithm of each spread
     */
    Solved at(double[] logs) {
        SymmetricFactor factor = new SymmetricFactor(pattern);
        double[] right = new double[pattern.size()];
        double misfit = 0;
        double deviations = 0;
        for (int s = 0; s <= spreads; s++) {
            double weight = s == spreads ? 1 : Math.exp(-2 * logs[s]);
            shares[s].addTo(factor, right, weight);
            misfit += weight * shares[s].misfit;
            deviations += s == spreads ? 0 : shares[s].count * logs[s];
        }
        int bad = factor.factor();
        double[] solution = right.clone();
        if (bad < 0) {
            factor.solve(solution);
        }
        double left = misfit;
        for (int i = 0; i < right.length; i++) {
            left -= right[i] * solution[i];
        }
        double likelihood = bad >= 0 ? -1e300 : -deviations - (factor.logDeterminant() + left) / 2;
        return new Solved(this, factor, solution, likelihood);
    }

    private Share share(int spread) {
        return shares[spread == Equation.KNOWN ? spreads : spread];
    }

    private static int[] ends(List<Equation> equations) {
        int count = 0;
        for (Equation equation : equations) {
            count += equation.size() * (equation.size() - 1);
        }
        int[] ends = new int[count];
        int at = 0;
        for (Equation equation : equations) {
            for (int i = 0; i < equation.size(); i++) {
                for (int j = 0; j < i; j++) {
                    ends[at++] = equation.unknown(i);
                    ends[at++] = equation.unknown(j);
                }
            }
        }
        return ends;
    }

    /** What the equations of one spread add to the matrix and its right side, with the spread 1. */
    private static final class Share {
        private final double[] diagonal;
        private final double[] off;
        private final double[] right;
        private double misfit;
        private int count;

        Share(int size, int entries) {
            diagonal = new double[size];
            right = new double[size];
            off = new double[entries];
        }

        void add(Equation equation, Pattern pattern) {
            for (int i = 0; i < equation.size(); i++) {
                double slope = equation.slope(i);
                int place = pattern.place(equation.unknown(i));
                diagonal[place] += slope * slope;
                right[place] -= slope * equation.constant();
                for (int j = 0; j < i; j++) {
                    off[pattern.slot(place, pattern.place(equation.unknown(j)))] += slope * equation.slope(j);
                }
            }
            misfit += equation.constant() * equation.constant();
            count++;
        }

        void addTo(SymmetricFactor factor, double[] sum, double weight) {
            for (int i = 0; i < diagonal.length; i++) {
                factor.addDiagonal(i, weight * diagonal[i]);
                sum[i] += weight * right[i];
            }
            for (int slot = 0; slot < off.length; slot++) {
                factor.add(slot, weight * off[slot]);
            }
        }
    }
}
