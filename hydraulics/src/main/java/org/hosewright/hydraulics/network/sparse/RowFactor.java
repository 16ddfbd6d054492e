package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;

/** The factors of many matrices of one pattern abreast: every entry is a row of numbers, one for each matrix.
 *
 * <p>What {@link LaplacianFactor} does, it does for all of them in one pass: where an entry stands is looked up once for
 * the row, and the row itself is plain arithmetic on neighbouring numbers.
 */
public final class RowFactor {
    private final Pattern pattern;
    private final int[] targets;
    private final double[][] whole;
    private final double[][] off;
    private final double[][] ground;
    private final double[][] inverse;

    /** Makes room.
     *
     * @param abreast how many matrices
     */
    public RowFactor(Pattern pattern, int abreast) {
        this.pattern = pattern;
        targets = Targets.of(pattern);
        whole = new double[pattern.entries() + 1][abreast];
        off = new double[pattern.entries()][abreast];
        ground = new double[pattern.size() + 1][abreast];
        inverse = new double[pattern.size()][abreast];
    }

    /** Whether a pattern is small enough for the places of all its products to be kept. */
    public static boolean suits(Pattern pattern) {
        return Targets.count(pattern) <= LaplacianFactor.SENT;
    }

    /** Makes the matrices empty. */
    public void clear() {
        for (double[] entry : whole) {
            Arrays.fill(entry, 0);
        }
        for (double[] entry : ground) {
            Arrays.fill(entry, 0);
        }
    }

    /** The matrices to be filled, as {@link LaplacianFactor#entries}. */
    public double[][] entries() {
        return whole;
    }

    /** What joins each place to the ground, as {@link LaplacianFactor#ground}. */
    public double[][] ground() {
        return ground;
    }

    /** Turns the matrices into their factors, in place, and solves a system with each; where nothing joins a matrix to
     * the ground, its answers are no numbers.
     *
     * @param x right-hand sides by places, then the answers; rows beyond the matrix are left alone
     */
    public void factor(double[][] x) {
        int[] start = pattern.start();
        int at = 0;
        for (int j = 0; j < inverse.length; j++) {
            invert(j);
            for (int p = start[j]; p < start[j + 1]; p++) {
                share(j, p, x);
                for (int q = p + 1; q < start[j + 1]; q++) {
                    addProduct(whole[targets[at++]], off[p], whole[q]);
                }
            }
            multiply(x[j], inverse[j]);
        }
        back(x);
    }

    private void back(double[][] x) {
        int[] start = pattern.start();
        int[] row = pattern.row();
        for (int j = inverse.length - 1; j >= 0; j--) {
            for (int p = start[j]; p < start[j + 1]; p++) {
                addProduct(x[j], off[p], x[row[p]]);
            }
        }
    }

    private void invert(int j) {
        double[] sum = inverse[j];
        System.arraycopy(ground[j], 0, sum, 0, sum.length);
        for (int p = pattern.start()[j]; p < pattern.start()[j + 1]; p++) {
            add(sum, whole[p]);
        }
        for (int l = 0; l < sum.length; l++) {
            sum[l] = 1 / sum[l];
        }
    }

    /** Divides an entry of a column by its pivot and hands the column's share of ground and right-hand side on. */
    private void share(int j, int p, double[][] x) {
        double[] entry = whole[p];
        double[] by = inverse[j];
        double[] share = off[p];
        for (int l = 0; l < share.length; l++) {
            share[l] = entry[l] * by[l];
        }
        int row = pattern.row()[p];
        addProduct(ground[row], share, ground[j]);
        addProduct(x[row], share, x[j]);
    }

    private static void add(double[] to, double[] what) {
        for (int l = 0; l < to.length; l++) {
            to[l] += what[l];
        }
    }

    private static void addProduct(double[] to, double[] one, double[] other) {
        for (int l = 0; l < to.length; l++) {
            to[l] += one[l] * other[l];
        }
    }

    private static void multiply(double[] what, double[] by) {
        for (int l = 0; l < what.length; l++) {
            what[l] *= by[l];
        }
    }
}
