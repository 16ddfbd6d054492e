package org.hosewright.evidence.fit;

import java.util.Arrays;

/** A block with its latent values rotated out: what is left binds the unknowns alone. */
final class Elimination {
    private final int latents;
    private final double[][] rows;

    /** Rotates the latent columns of a block to the top.
     *
     * @param cells the block's rows; used up
     * @param latents how many of the first columns are latent
     */
    Elimination(double[][] cells, int latents) {
        this.rows = cells;
        this.latents = latents;
        for (int column = 0; column < latents; column++) {
            for (int row = column + 1; row < cells.length; row++) {
                rotate(cells[column], cells[row], column);
            }
        }
    }

    private static void rotate(double[] pivot, double[] row, int column) {
        double below = row[column];
        if (below == 0) {
            return;
        }
        double length = Math.sqrt(pivot[column] * pivot[column] + below * below);
        double cos = pivot[column] / length;
        double sin = below / length;
        for (int j = column; j < row.length; j++) {
            double upper = pivot[j];
            pivot[j] = cos * upper + sin * row[j];
            row[j] = cos * row[j] - sin * upper;
        }
    }

    /** Hands the rows without latent values on. */
    void into(Triangle triangle) {
        for (int row = latents; row < rows.length; row++) {
            triangle.absorb(rows[row].clone(), latents);
        }
    }

    /** The rows without latent values, as derivatives by unknown and the residual. */
    double[][] left() {
        double[][] left = new double[rows.length - latents][];
        for (int row = latents; row < rows.length; row++) {
            left[row - latents] = Arrays.copyOfRange(rows[row], latents, rows[row].length);
        }
        return left;
    }

    /** The step of the latent values that goes with a step of the unknowns. */
    double[] step(double[] unknowns) {
        double[] step = new double[latents];
        for (int k = latents - 1; k >= 0; k--) {
            double[] row = rows[k];
            double sum = -row[row.length - 1];
            for (int j = k + 1; j < latents; j++) {
                sum -= row[j] * step[j];
            }
            for (int j = 0; j < unknowns.length; j++) {
                sum -= row[latents + j] * unknowns[j];
            }
            step[k] = row[k] == 0 ? 0 : sum / row[k];
        }
        return step;
    }

    /** The share of the cost that the latent step removes. */
    double removable() {
        double sum = 0;
        for (int k = 0; k < latents; k++) {
            double right = rows[k][rows[k].length - 1];
            sum += right * right;
        }
        return sum;
    }

    double logDeterminant() {
        double sum = 0;
        for (int k = 0; k < latents; k++) {
            sum += 2 * Math.log(Math.abs(rows[k][k]));
        }
        return sum;
    }

    /** Splits a linear form in latent values and unknowns: the part the latent values keep to themselves is returned.
     *
     * @param byLatent the form's latent coefficients; solved in place
     * @param byUnknown its coefficients by unknown; becomes the form in the unknowns alone
     * @return variance of the form from the latent values, given the unknowns
     */
    double project(double[] byLatent, double[] byUnknown) {
        double variance = 0;
        for (int k = 0; k < latents; k++) {
            double sum = byLatent[k];
            for (int j = 0; j < k; j++) {
                sum -= rows[j][k] * byLatent[j];
            }
            byLatent[k] = sum / rows[k][k];
            variance += byLatent[k] * byLatent[k];
        }
        for (int k = 0; k < latents; k++) {
            for (int j = 0; j < byUnknown.length; j++) {
                byUnknown[j] -= rows[k][latents + j] * byLatent[k];
            }
        }
        return variance;
    }
}
