package org.hosewright.evidence.fit;

import java.util.Collection;

/** Where a problem's cost is least, with what the curvature there says. */
public final class Minimum {
    private final Blocks problem;
    private final Point point;
    private final Linear linear;

    Minimum(Blocks problem, Point point, Linear linear) {
        this.problem = problem;
        this.point = point;
        this.linear = linear;
    }

    public Point point() {
        return point;
    }

    /** The sum of squared residuals. */
    public double cost() {
        return linear.cost();
    }

    /** The information on the unknowns, latent values eliminated. */
    public Triangle information() {
        return linear.triangle();
    }

    /** Natural logarithm of the determinant of the whole information matrix, latent values included. */
    public double logDeterminant() {
        double sum = linear.triangle().logDeterminant();
        for (int block = 0; block < problem.size(); block++) {
            sum += linear.block(block).logDeterminant();
        }
        return sum;
    }

    /** How much of the cost some blocks cause: the cost less the least cost without them, as the slopes have it. */
    public double excess(Collection<Integer> blocks) {
        return linear.cost() - linear.triangle(problem.unknowns(), blocks).leftover();
    }

    /** What a block adds to the information, as rows of derivatives by unknown and the residual. */
    public double[][] rows(int block) {
        return linear.block(block).left();
    }

    /** A block's residuals, each divided by its standard deviation. */
    public double[] residuals(int block) {
        double[][] cells = point.rows(problem, block).cells();
        double[] residuals = new double[cells.length];
        for (int row = 0; row < cells.length; row++) {
            residuals[row] = cells[row][cells[row].length - 1];
        }
        return residuals;
    }

    /** How much of each residual of a block the fit has used up, from 0 to 1.
     *
     * @param covariance of the unknowns
     */
    public double[] leverages(int block, double[][] covariance) {
        double[][] cells = point.rows(problem, block).cells();
        double[] leverages = new double[cells.length];
        for (int row = 0; row < cells.length; row++) {
            leverages[row] = variance(block, cells[row], covariance);
        }
        return leverages;
    }

    /** Variance of a linear form in a block's latent values and the unknowns.
     *
     * @param form coefficients by latent value, then by unknown
     * @param covariance of the unknowns
     */
    public double variance(int block, double[] form, double[][] covariance) {
        double[] byUnknown = new double[problem.unknowns()];
        System.arraycopy(form, problem.latents(block), byUnknown, 0, byUnknown.length);
        double own = linear.block(block).project(head(form, problem.latents(block)), byUnknown);
        return own + quadratic(byUnknown, covariance);
    }

    private static double[] head(double[] form, int count) {
        double[] head = new double[count];
        System.arraycopy(form, 0, head, 0, count);
        return head;
    }

    /** A quadratic form. */
    public static double quadratic(double[] form, double[][] matrix) {
        double sum = 0;
        for (int i = 0; i < form.length; i++) {
            for (int j = 0; form[i] != 0 && j < form.length; j++) {
                sum += form[i] * matrix[i][j] * form[j];
            }
        }
        return sum;
    }
}
