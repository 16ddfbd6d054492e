package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;

/** The factor L D L' of a symmetric positive definite matrix on a pattern.
 *
 * @source A. George and J. Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981
 */
public final class SymmetricFactor {
    private final Pattern pattern;
    private final double[] off;
    private final double[] pivot;
    private final double[] work;

    public SymmetricFactor(Pattern pattern) {
        this.pattern = pattern;
        off = new double[pattern.entries()];
        pivot = new double[pattern.size()];
        work = new double[pattern.size()];
    }

    /** Makes the matrix empty. */
    public void clear() {
        Arrays.fill(off, 0);
        Arrays.fill(pivot, 0);
    }

    /** Adds to the entry of two places, which stand beside one another on the pattern.
     *
     * @param slot {@link Pattern#slot} of the two
     */
    public void add(int slot, double value) {
        off[slot] += value;
    }

    /** Adds to the diagonal. */
    public void addDiagonal(int place, double value) {
        pivot[place] += value;
    }

    /** Turns the matrix into its factor, in place.
     *
     * @return the first place whose pivot is not above 0, or -1 where all are
     */
    public int factor() {
        int[] start = pattern.start();
        int[] row = pattern.row();
        for (int j = 0; j < pattern.size(); j++) {
            double left = pivot[j] - gather(j);
            if (!(left > 0)) {
                return j;
            }
            pivot[j] = left;
            for (int p = start[j]; p < start[j + 1]; p++) {
                off[p] = (off[p] - work[row[p]]) / left;
                work[row[p]] = 0;
            }
        }
        return -1;
    }

    /** Sums what the columns before take off this one; gives what they take off its pivot. */
    private double gather(int j) {
        int[] row = pattern.row();
        double own = 0;
        for (int t = pattern.rowStart()[j]; t < pattern.rowStart()[j + 1]; t++) {
            int column = pattern.rowColumn()[t];
            int p = pattern.rowAt()[t];
            double factor = off[p] * pivot[column];
            own += factor * off[p];
            for (int q = p + 1; q < pattern.start()[column + 1]; q++) {
                work[row[q]] += factor * off[q];
            }
        }
        return own;
    }

    /** Solves in place, by places, with the last factor. */
    public void solve(double[] x) {
        int[] start = pattern.start();
        int[] row = pattern.row();
        for (int j = 0; j < pattern.size(); j++) {
            double at = x[j];
            for (int p = start[j]; at != 0 && p < start[j + 1]; p++) {
                x[row[p]] -= off[p] * at;
            }
            x[j] = at / pivot[j];
        }
        for (int j = pattern.size() - 1; j >= 0; j--) {
            double at = x[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                at -= off[p] * x[row[p]];
            }
            x[j] = at;
        }
    }

    /** Natural logarithm of the matrix's determinant. */
    public double logDeterminant() {
        double sum = 0;
        for (double one : pivot) {
            sum += Math.log(one);
        }
        return sum;
    }

    /** The inverse on the pattern, of the last factor. */
    public SymmetricInverse inverse() {
        return new SymmetricInverse(pattern, off, pivot);
    }
}
