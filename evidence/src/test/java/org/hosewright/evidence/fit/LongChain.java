package org.hosewright.evidence.fit;

import java.util.Arrays;
import java.util.Random;
import java.util.function.Function;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.correlation.Covariance;

/** A random walk of Metropolis over unknowns, latent values and scatters of a problem in blocks: slow, and right without any approximation.
 *
 * <p>Sources: N. Metropolis and others, Equation of state calculations by fast computing machines, J. Chem. Phys. 21, 1953; scale of the steps:
 *     G. O. Roberts, A. Gelman and W. R. Gilks, Weak convergence and optimal scaling of random walk Metropolis algorithms, Ann. Appl. Probab. 7, 1997
 */
public final class LongChain {
    private static final double SCALE = 2.38;

    /** Steps whose spread shapes the steps that count. */
    private static final int LEARNING = 150_000;

    /** Every so many steps one is kept: neighbours are alike. */
    private static final int THIN = 10;

    private final Function<double[], Blocks> problem;
    private final Target target;
    private final Point start;
    private final int scatters;
    private final Random random;

    /** What is known of a point beside the problem's cost: a log-density, or minus infinity where it may not be. */
    public interface Target {
        double beside(double[] unknowns, double[] logScatters);
    }

    /** A chain.
     *
     * @param problem by the logarithms of its scatters
     * @param scatters how many
     */
    public LongChain(Function<double[], Blocks> problem, int scatters, Target target, Point start, long seed) {
        this.problem = problem;
        this.scatters = scatters;
        this.target = target;
        this.start = start;
        this.random = new Random(seed);
    }

    /** Kept steps: each the unknowns, then the latent values, then the scatters' logarithms. */
    public double[][] walk(int steps) {
        double[] from = flat();
        double[][] learnt = walk(from, factor(linear()), LEARNING);
        RealMatrix spread =
                new Covariance(Arrays.copyOfRange(learnt, learnt.length / 3, learnt.length)).getCovarianceMatrix();
        return walk(learnt[learnt.length - 1], factor(spread), steps);
    }

    private double[][] walk(double[] from, RealMatrix factor, int steps) {
        double[] at = from.clone();
        double[][] kept = new double[steps / THIN][];
        double here = density(at);
        for (int step = 0; step < steps; step++) {
            double[] wanted = factor.operate(normals(at.length));
            for (int i = 0; i < at.length; i++) {
                wanted[i] += at[i];
            }
            double there = density(wanted);
            if (Math.log(random.nextDouble()) < there - here) {
                at = wanted;
                here = there;
            }
            if (step % THIN == THIN - 1) {
                kept[step / THIN] = at;
            }
        }
        return kept;
    }

    private double[] normals(int count) {
        double[] normals = new double[count];
        for (int i = 0; i < count; i++) {
            normals[i] = random.nextGaussian();
        }
        return normals;
    }

    private double density(double[] flat) {
        double[] unknowns = Arrays.copyOf(flat, start.unknowns().length);
        double[] logs = Arrays.copyOfRange(flat, flat.length - scatters, flat.length);
        double beside = target.beside(unknowns, logs);
        return beside == Double.NEGATIVE_INFINITY
                ? beside
                : beside - point(flat).cost(problem.apply(logs)) / 2;
    }

    private Point point(double[] flat) {
        double[] unknowns = Arrays.copyOf(flat, start.unknowns().length);
        double[][] latents = new double[start.blocks()][];
        int at = unknowns.length;
        for (int block = 0; block < latents.length; block++) {
            latents[block] = Arrays.copyOfRange(flat, at, at + start.latents(block).length);
            at += latents[block].length;
        }
        return new Point(unknowns, latents);
    }

    private double[] flat() {
        double[] flat = start.unknowns();
        for (int block = 0; block < start.blocks(); block++) {
            double[] own = start.latents(block);
            flat = Arrays.copyOf(flat, flat.length + own.length);
            System.arraycopy(own, 0, flat, flat.length - own.length, own.length);
        }
        return Arrays.copyOf(flat, flat.length + scatters);
    }

    /** The spread that the slopes at the start have, with a guess for the scatters. */
    private RealMatrix linear() {
        Blocks blocks = problem.apply(new double[scatters]);
        int shared = blocks.unknowns();
        int size = flat().length;
        RealMatrix information = new Array2DRowRealMatrix(size, size);
        int at = shared;
        for (int block = 0; block < blocks.size(); block++) {
            int latents = blocks.latents(block);
            for (double[] cells : start.rows(blocks, block).cells()) {
                double[] row = new double[size];
                System.arraycopy(cells, 0, row, at, latents);
                System.arraycopy(cells, latents, row, 0, shared);
                information = information.add(square(row));
            }
            at += latents;
        }
        for (int i = at; i < size; i++) {
            information.setEntry(i, i, 10);
        }
        return new LUDecomposition(information).getSolver().getInverse();
    }

    private static RealMatrix square(double[] row) {
        RealMatrix column = new Array2DRowRealMatrix(row);
        return column.multiply(column.transpose());
    }

    private static RealMatrix factor(RealMatrix spread) {
        RealMatrix even = spread.add(spread.transpose()).scalarMultiply(0.5);
        double scale = SCALE / Math.sqrt(spread.getRowDimension());
        return new CholeskyDecomposition(even, 1e-6, 1e-14).getL().scalarMultiply(scale);
    }
}
