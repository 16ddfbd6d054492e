package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

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
    /** More products than this are gathered column by column, not each sent to its place. */
    static final long SENT = 200_000;

    private final Pattern pattern;
    private final int @Nullable [] targets;

    /** The entries before they are divided by their pivots, and after. */
    private final double[] whole;

    private final double[] off;
    private final double[] ground;
    private final double[] inverse;
    private final double[] work;

    public LaplacianFactor(Pattern pattern) {
        this.pattern = pattern;
        targets = Targets.count(pattern) > SENT ? null : Targets.of(pattern);
        whole = new double[pattern.entries() + 1];
        off = new double[pattern.entries() + 1];
        ground = new double[pattern.size() + 1];
        inverse = new double[pattern.size()];
        work = new double[pattern.size()];
    }

    /** Makes the matrix empty. */
    public void clear() {
        Arrays.fill(whole, 0);
        Arrays.fill(ground, 0);
    }

    /** The matrix to be filled: by {@link Pattern#slot} what joins two places; one more, at the end, is not looked at. */
    public double[] entries() {
        return whole;
    }

    /** What joins each place to the ground, to be filled; one more, at the end, is not looked at. */
    public double[] ground() {
        return ground;
    }

    /** Turns the matrix into its factor, in place, and solves a system with it.
     *
     * @param x its right-hand side by places, then its answer; entries beyond the matrix are left alone
     * @return the first place that nothing joins to the ground, or -1 where all are
     */
    public int factor(double[] x) {
        int failed = targets == null ? gather(x) : send(x, targets);
        if (failed < 0) {
            back(x);
        }
        return failed;
    }

    private int gather(double[] x) {
        for (int j = 0; j < pattern.size(); j++) {
            gather(j);
            double sum = sum(j);
            if (!(sum > 0)) {
                return j;
            }
            inverse[j] = 1 / sum;
            divide(j);
            forward(j, x);
        }
        return -1;
    }

    /** The pivot: all that joins a place to others and to the ground. */
    private double sum(int j) {
        double sum = ground[j];
        double beside = 0;
        int end = pattern.start()[j + 1];
        int p = pattern.start()[j];
        for (; p + 1 < end; p += 2) {
            sum += whole[p];
            beside += whole[p + 1];
        }
        return p < end ? sum + beside + whole[p] : sum + beside;
    }

    private void divide(int j) {
        double by = inverse[j];
        double down = ground[j];
        int[] row = pattern.row();
        int end = pattern.start()[j + 1];
        for (int p = pattern.start()[j]; p < end; p++) {
            double share = whole[p] * by;
            off[p] = share;
            ground[row[p]] += share * down;
        }
    }

    /** Divides each column by its pivot and adds what it gives to the columns after it. */
    private int send(double[] x, int[] slots) {
        int[] start = pattern.start();
        int[] row = pattern.row();
        int at = 0;
        for (int j = 0; j < inverse.length; j++) {
            int end = start[j + 1];
            double sum = sum(j);
            if (!(sum > 0)) {
                return j;
            }
            double by = 1 / sum;
            double down = ground[j];
            double brings = x[j];
            inverse[j] = by;
            x[j] = brings * by;
            for (int p = start[j]; p < end; p++) {
                double share = whole[p] * by;
                off[p] = share;
                ground[row[p]] += share * down;
                x[row[p]] += share * brings;
                for (int q = p + 1; q < end; q++) {
                    whole[slots[at++]] += share * whole[q];
                }
            }
        }
        return -1;
    }

    /** Solves in place, by places, with the last factor; entries beyond the matrix are left alone. */
    public void solve(double[] x) {
        for (int j = 0; j < pattern.size(); j++) {
            forward(j, x);
        }
        back(x);
    }

    private void forward(int j, double[] x) {
        int[] row = pattern.row();
        int end = pattern.start()[j + 1];
        double at = x[j];
        for (int p = pattern.start()[j]; p < end; p++) {
            x[row[p]] += off[p] * at;
        }
        x[j] = at * inverse[j];
    }

    private void back(double[] x) {
        int[] start = pattern.start();
        int[] row = pattern.row();
        for (int j = pattern.size() - 1; j >= 0; j--) {
            double at = x[j];
            double beside = 0;
            int end = start[j + 1];
            int p = start[j];
            for (; p + 1 < end; p += 2) {
                at += off[p] * x[row[p]];
                beside += off[p + 1] * x[row[p + 1]];
            }
            x[j] = p < end ? at + beside + off[p] * x[row[p]] : at + beside;
        }
    }

    /** Sums what the columns before take off this one: four columns of one group at a time, then one by one. */
    private void gather(int j) {
        int[] rowStart = pattern.rowStart();
        int[] rowColumn = pattern.rowColumn();
        int[] rowAt = pattern.rowAt();
        int[] group = pattern.group();
        int[] row = pattern.row();
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
        for (int p = pattern.start()[j]; p < pattern.start()[j + 1]; p++) {
            whole[p] += work[row[p]];
            work[row[p]] = 0;
        }
    }

    private void gatherOne(int p, int column) {
        int[] row = pattern.row();
        double factor = whole[p];
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
        double f0 = whole[p0];
        double f1 = whole[p1];
        double f2 = whole[p2];
        double f3 = whole[p3];
        int count = pattern.start()[column + 1] - p0;
        for (int q = 1; q < count; q++) {
            work[row[p0 + q]] += f0 * off[p0 + q] + f1 * off[p1 + q] + f2 * off[p2 + q] + f3 * off[p3 + q];
        }
    }
}
