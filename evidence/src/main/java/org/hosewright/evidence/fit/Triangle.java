package org.hosewright.evidence.fit;

import java.util.List;

/** The square root of an information matrix, upper triangular, with its right side: rows are rotated in one by one.
 *
 * <p>Rotations keep the digits that a normal matrix would square away, and cost nothing where a row is zero.
 */
public final class Triangle {
    private final int n;
    private final double[][] r;
    private double leftover;

    Triangle(int n) {
        this.n = n;
        this.r = new double[n][n + 1];
    }

    /** The information of rows, each its derivatives and then its residual. */
    public static Triangle of(int unknowns, List<double[][]> pieces) {
        Triangle sum = new Triangle(unknowns);
        for (double[][] piece : pieces) {
            for (double[] row : piece) {
                sum.absorb(row.clone(), 0);
            }
        }
        return sum;
    }

    Triangle copy() {
        Triangle twin = new Triangle(n);
        for (int k = 0; k < n; k++) {
            System.arraycopy(r[k], 0, twin.r[k], 0, n + 1);
        }
        twin.leftover = leftover;
        return twin;
    }

    public int size() {
        return n;
    }

    /** An entry of the triangle; 0 below the diagonal. */
    public double at(int row, int column) {
        return r[row][column];
    }

    /** The part of the cost that no choice of unknowns removes. */
    double leftover() {
        return leftover;
    }

    /** Rotates a row in.
     *
     * @param row its derivatives, then its residual; used up
     * @param from where its columns begin
     */
    void absorb(double[] row, int from) {
        for (int k = 0; k < n; k++) {
            double below = row[from + k];
            if (below == 0) {
                continue;
            }
            double[] pivot = r[k];
            double length = Math.sqrt(pivot[k] * pivot[k] + below * below);
            double cos = pivot[k] / length;
            double sin = below / length;
            for (int j = k; j <= n; j++) {
                double upper = pivot[j];
                pivot[j] = cos * upper + sin * row[from + j];
                row[from + j] = cos * row[from + j] - sin * upper;
            }
        }
        leftover += row[from + n] * row[from + n];
    }

    /** Rotates in a row with one derivative and a zero residual. */
    void absorbDiagonal(int column, double weight) {
        double[] row = new double[n + 1];
        row[column] = weight;
        absorb(row, 0);
    }

    /** The share of the cost that the step of {@link #step} removes. */
    double removable() {
        double sum = 0;
        for (double[] row : r) {
            sum += row[n] * row[n];
        }
        return sum;
    }

    /** The step that minimises the linearised cost; a direction without information does not move. */
    double[] step() {
        double[] step = new double[n];
        for (int k = n - 1; k >= 0; k--) {
            double sum = -r[k][n];
            for (int j = k + 1; j < n; j++) {
                sum -= r[k][j] * step[j];
            }
            step[k] = r[k][k] == 0 ? 0 : sum / r[k][k];
        }
        return step;
    }

    /** True where every unknown has information. */
    public boolean isRegular() {
        for (int k = 0; k < n; k++) {
            if (r[k][k] == 0) {
                return false;
            }
        }
        return true;
    }

    /** Natural logarithm of the determinant of the information matrix. */
    public double logDeterminant() {
        double sum = 0;
        for (int k = 0; k < n; k++) {
            sum += 2 * Math.log(Math.abs(r[k][k]));
        }
        return sum;
    }

    /** The inverse of the information matrix. */
    public double[][] covariance() {
        double[][] inverse = inverse();
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                double sum = 0;
                for (int k = j; k < n; k++) {
                    sum += inverse[i][k] * inverse[j][k];
                }
                covariance[i][j] = sum;
                covariance[j][i] = sum;
            }
        }
        return covariance;
    }

    private double[][] inverse() {
        double[][] inverse = new double[n][n];
        for (int j = 0; j < n; j++) {
            inverse[j][j] = 1 / r[j][j];
            for (int i = j - 1; i >= 0; i--) {
                double sum = 0;
                for (int k = i + 1; k <= j; k++) {
                    sum += r[i][k] * inverse[k][j];
                }
                inverse[i][j] = -sum / r[i][i];
            }
        }
        return inverse;
    }
}
