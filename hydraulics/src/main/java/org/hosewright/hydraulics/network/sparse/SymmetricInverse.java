package org.hosewright.hydraulics.network.sparse;

/** Of the inverse of a symmetric positive definite matrix what lies on the pattern of its factor.
 *
 * @source K. Takahashi, J. Fagan, M.-S. Chin, Formation of a sparse bus impedance matrix and its application to short circuit
 *     study, 1973
 */
public final class SymmetricInverse {
    private final Pattern pattern;
    private final double[] beside;
    private final double[] diagonal;

    /** The inverse from its factor's columns. */
    SymmetricInverse(Pattern pattern, double[] off, double[] pivot) {
        this.pattern = pattern;
        beside = new double[off.length];
        diagonal = new double[pivot.length];
        int[] start = pattern.start();
        int[] row = pattern.row();
        for (int j = pivot.length - 1; j >= 0; j--) {
            double own = 1 / pivot[j];
            for (int p = start[j + 1] - 1; p >= start[j]; p--) {
                beside[p] = -sum(j, row[p], off);
                own -= off[p] * beside[p];
            }
            diagonal[j] = own;
        }
    }

    /** The entry of two places that are one, or stand beside one another on the pattern. */
    public double at(int one, int other) {
        return one == other ? diagonal[one] : beside[pattern.slot(one, other)];
    }

    /** The sum over a column's entries of the factor times the inverse's entry with a row. */
    private double sum(int j, int with, double[] off) {
        double sum = 0;
        for (int q = pattern.start()[j]; q < pattern.start()[j + 1]; q++) {
            sum += off[q] * at(pattern.row()[q], with);
        }
        return sum;
    }
}
