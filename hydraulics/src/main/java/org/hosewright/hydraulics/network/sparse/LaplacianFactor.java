package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;

/** The factor of a network's matrix of conductances, without one subtraction.
 *
 * <p>The matrix has minus the conductance of each pair of nodes off its diagonal; the diagonal makes up for them and
 * for what joins a node to the ground. Kept are the sizes of the entries off the diagonal and each node's conductance
 * to the ground; a pivot is their sum. So each entry of the factor is good to a few roundings, however far the
 * conductances lie apart, and a pivot above 0 stays above 0.
 *
 * @source W. Grassmann, M. Taksar, D. Heyman, Regenerative analysis and steady state distributions for Markov chains,
 *     1985 (elimination without subtraction); A. George and J. Liu, Computer Solution of Large Sparse Positive
 *     Definite Systems, 1981 (left-looking columns)
 */
public final class LaplacianFactor {
    private final Pattern pattern;
    private final double[] off;
    private final double[] ground;
    private final double[] pivot;
    private final double[] work;

    public LaplacianFactor(Pattern pattern) {
        this.pattern = pattern;
        off = new double[pattern.entries() + 1];
        ground = new double[pattern.size() + 1];
        pivot = new double[pattern.size()];
        work = new double[pattern.size()];
    }

    /** A slot for {@link #add} that stands for no pair of nodes. */
    public int noSlot() {
        return off.length - 1;
    }

    /** A place for {@link #add} that stands for no node. */
    public int noPlace() {
        return ground.length - 1;
    }

    /** Makes the matrix empty. */
    public void clear() {
        Arrays.fill(off, 0);
        Arrays.fill(ground, 0);
    }

    /** Joins two places by a conductance, or one to the ground.
     *
     * @param slot {@link Pattern#slot} of two places, or {@link #noSlot}
     * @param place the place that is joined to the ground, or {@link #noPlace}
     */
    public void add(int slot, int place, double conductance) {
        off[slot] += conductance;
        ground[place] += conductance;
    }

    /** Turns the matrix into its factor, in place.
     *
     * @return the first place that nothing joins to the ground, or -1 where all are
     */
    public int factor() {
        int[] start = pattern.start();
        int[] row = pattern.row();
        for (int j = 0; j < pattern.size(); j++) {
            gather(j);
            double sum = ground[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                off[p] += work[row[p]];
                work[row[p]] = 0;
                sum += off[p];
            }
            if (!(sum > 0)) {
                return j;
            }
            pivot[j] = sum;
            double down = ground[j];
            double inverse = 1 / sum;
            for (int p = start[j]; p < start[j + 1]; p++) {
                off[p] *= inverse;
                ground[row[p]] += off[p] * down;
            }
        }
        return -1;
    }

    /** Solves in place, by places, with the last factor; entries beyond the matrix are left alone. */
    public void solve(double[] x) {
        int[] start = pattern.start();
        int[] row = pattern.row();
        for (int j = 0; j < pattern.size(); j++) {
            double at = x[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                x[row[p]] += off[p] * at;
            }
            x[j] = at / pivot[j];
        }
        for (int j = pattern.size() - 1; j >= 0; j--) {
            double at = x[j];
            for (int p = start[j]; p < start[j + 1]; p++) {
                at += off[p] * x[row[p]];
            }
            x[j] = at;
        }
    }

    /** Sums what the columns before take off this one: four columns of one group at a time, then one by one. */
    private void gather(int j) {
        int[] rowStart = pattern.rowStart();
        int[] rowColumn = pattern.rowColumn();
        int[] rowAt = pattern.rowAt();
        int[] group = pattern.group();
        int end = rowStart[j + 1];
        int t = rowStart[j];
        while (t < end) {
            int column = rowColumn[t];
            boolean four = t + 3 < end && rowColumn[t + 3] == column + 3 && group[column + 3] == group[column];
            if (four) {
                gatherFour(t, rowAt, column);
                t += 4;
            } else {
                gatherOne(rowAt[t], column);
                t++;
            }
        }
    }

    private void gatherOne(int p, int column) {
        int[] row = pattern.row();
        double factor = off[p] * pivot[column];
        int end = pattern.start()[column + 1];
        for (int q = p + 1; q < end; q++) {
            work[row[q]] += factor * off[q];
        }
    }

    private void gatherFour(int t, int[] rowAt, int column) {
        int[] row = pattern.row();
        int p0 = rowAt[t];
        int p1 = rowAt[t + 1];
        int p2 = rowAt[t + 2];
        int p3 = rowAt[t + 3];
        double f0 = off[p0] * pivot[column];
        double f1 = off[p1] * pivot[column + 1];
        double f2 = off[p2] * pivot[column + 2];
        double f3 = off[p3] * pivot[column + 3];
        int count = pattern.start()[column + 1] - p0;
        for (int q = 1; q < count; q++) {
            work[row[p0 + q]] += f0 * off[p0 + q] + f1 * off[p1 + q] + f2 * off[p2 + q] + f3 * off[p3 + q];
        }
    }
}
