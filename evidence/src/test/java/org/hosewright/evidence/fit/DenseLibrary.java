package org.hosewright.evidence.fit;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** A general library's Levenberg-Marquardt method on a problem in blocks: every latent value one more unknown, and the same exact
 * slopes, written into one dense matrix.
 */
public final class DenseLibrary {
    private final Blocks problem;
    private final Point start;
    private final int unknowns;
    private final int rows;

    public DenseLibrary(Blocks problem, Point start) {
        this.problem = problem;
        this.start = start;
        this.unknowns = problem.unknowns() + sum(false);
        this.rows = sum(true);
    }

    private int sum(boolean ofRows) {
        int sum = 0;
        for (int block = 0; block < problem.size(); block++) {
            sum += ofRows ? problem.rows(block) : problem.latents(block);
        }
        return sum;
    }

    /** The library's answer: shared unknowns first, then the latent values block by block. */
    public Optimum solve(double tolerance) {
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(tolerance)
                .withParameterRelativeTolerance(tolerance)
                .optimize(new LeastSquaresBuilder()
                        .start(flat())
                        .target(new double[rows])
                        .maxEvaluations(1000)
                        .maxIterations(1000)
                        .model(this::model)
                        .build());
    }

    private double[] flat() {
        double[] flat = new double[unknowns];
        System.arraycopy(start.unknowns(), 0, flat, 0, problem.unknowns());
        int at = problem.unknowns();
        for (int block = 0; block < problem.size(); block++) {
            double[] latents = start.latents(block);
            System.arraycopy(latents, 0, flat, at, latents.length);
            at += latents.length;
        }
        return flat;
    }

    private Pair<RealVector, RealMatrix> model(RealVector point) {
        double[] flat = point.toArray();
        double[] shared = java.util.Arrays.copyOf(flat, problem.unknowns());
        double[] residuals = new double[rows];
        double[][] slopes = new double[rows][unknowns];
        int row = 0;
        int at = shared.length;
        for (int block = 0; block < problem.size(); block++) {
            int latents = problem.latents(block);
            Rows own = new Rows(problem.rows(block), latents, shared.length);
            problem.evaluate(block, shared, java.util.Arrays.copyOfRange(flat, at, at + latents), own);
            for (double[] cells : own.cells()) {
                System.arraycopy(cells, 0, slopes[row], at, latents);
                System.arraycopy(cells, latents, slopes[row], 0, shared.length);
                residuals[row++] = cells[cells.length - 1];
            }
            at += latents;
        }
        return new Pair<>(new ArrayRealVector(residuals, false), new Array2DRowRealMatrix(slopes, false));
    }
}
