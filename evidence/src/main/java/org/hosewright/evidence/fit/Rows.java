package org.hosewright.evidence.fit;

/** The residuals of one block with their derivatives: latent columns first, then unknowns, then the residual. */
public final class Rows {
    private final int latents;
    private final double[][] cells;

    Rows(int rows, int latents, int unknowns) {
        this.latents = latents;
        this.cells = new double[rows][latents + unknowns + 1];
    }

    /** Adds to a residual. */
    public void residual(int row, double value) {
        cells[row][cells[row].length - 1] += value;
    }

    /** Adds to the derivative of a residual by one of the block's latent values. */
    public void byLatent(int row, int latent, double slope) {
        cells[row][latent] += slope;
    }

    /** Adds to the derivative of a residual by a shared unknown. */
    public void byUnknown(int row, int unknown, double slope) {
        cells[row][latents + unknown] += slope;
    }

    double[][] cells() {
        return cells;
    }

    /** The sum of the squared residuals. */
    double cost() {
        double sum = 0;
        for (double[] row : cells) {
            double residual = row[row.length - 1];
            sum += residual * residual;
        }
        return sum;
    }
}
