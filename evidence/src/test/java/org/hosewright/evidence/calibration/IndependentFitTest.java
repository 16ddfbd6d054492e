package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Scatter;
import org.hosewright.evidence.joint.Survey;
import org.junit.jupiter.api.Test;

/** The fit against a general library on the same readings, written anew in psi and gpm with every tip pressure an unknown. */
class IndependentFitTest {
    /** In prior standard deviations: far below anything shown. */
    private static final double NEAR = 1e-6;

    /** Relative, for standard errors that both take from a linearised problem. */
    private static final double NEAR_SHARE = 1e-5;

    private static final int SHARED = 6;
    private static final double STEP = 1e-5;

    @Test
    void exampleNightWithPitotAgrees() {
        check(new Tap.Pitot(), 1);
    }

    @Test
    void exampleNightWithSideTapAgrees() {
        double ratio = 0.875 / 1.5;
        check(
                new Tap.Side(Optional.of(org.hosewright.hydraulics.quantity.Length.ofInches(1.5))),
                1 - ratio * ratio * ratio * ratio);
    }

    private static void check(Tap tap, double share) {
        Joint all = Survey.of(ExampleNight.tapped(tap).night()).joint();
        Joint joint = all.only(List.of(0, 1, 2, 3, 4, 5, 7, 8));
        Fit fit = Fit.of(joint, joint.start());
        Optimum other = Library.solve(rows(), share, fit.joint().scatter());
        double[][] ours = fit.minimum().information().covariance();
        RealMatrix theirs = other.getCovariances(1e-12);
        // Our order: nozzle, hose, piping, pump gauge, tip gauge, meter, as the readings meet them.
        for (int i = 0; i < SHARED; i++) {
            assertThat(fit.minimum().point().unknown(i))
                    .isCloseTo(other.getPoint().getEntry(i), within(NEAR));
            double ratio = Math.sqrt(ours[i][i] / theirs.getEntry(i, i));
            assertThat(ratio).isCloseTo(1, within(NEAR_SHARE));
        }
        assertThat(fit.minimum().cost()).isCloseTo(other.getCost() * other.getCost(), within(NEAR));
    }

    private static List<Row> rows() {
        List<Row> rows = new ArrayList<>(ExampleNight.rows());
        rows.removeIf(row -> row.id().equals("7"));
        return rows;
    }

    /** The same problem for the library: six shared unknowns in prior deviations, then each reading's tip pressure in psi. */
    private static final class Library {
        static Optimum solve(List<Row> rows, double share, Scatter scatter) {
            double[] start = new double[SHARED + rows.size()];
            for (int i = 0; i < rows.size(); i++) {
                start[SHARED + i] = rows.get(i).tip() / share;
            }
            double[] target = new double[SHARED + 3 * rows.size()];
            return new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-15)
                    .withParameterRelativeTolerance(1e-14)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .target(target)
                            .maxEvaluations(1000)
                            .maxIterations(1000)
                            .model(point -> new Pair<>(
                                    new ArrayRealVector(residuals(point.toArray(), rows, share, scatter)),
                                    slopes(point.toArray(), rows, share, scatter)))
                            .build());
        }

        private static RealMatrix slopes(double[] at, List<Row> rows, double share, Scatter scatter) {
            RealMatrix slopes = new Array2DRowRealMatrix(SHARED + 3 * rows.size(), at.length);
            for (int j = 0; j < at.length; j++) {
                double[] up = at.clone();
                double[] down = at.clone();
                up[j] += STEP;
                down[j] -= STEP;
                double[] above = residuals(up, rows, share, scatter);
                double[] below = residuals(down, rows, share, scatter);
                for (int i = 0; i < above.length; i++) {
                    slopes.setEntry(i, j, (above[i] - below[i]) / (2 * STEP));
                }
            }
            return slopes;
        }

        private static double[] residuals(double[] u, List<Row> rows, double share, Scatter scatter) {
            double[] residuals = new double[SHARED + 3 * rows.size()];
            System.arraycopy(u, 0, residuals, 0, SHARED);
            double factor = Math.exp(0.015 * u[0]);
            double c = 15.5 * Math.exp(0.35 * u[1]);
            double k = 6 * u[2];
            double meter = Math.exp(0.05 * u[5]);
            for (int i = 0; i < rows.size(); i++) {
                Row row = rows.get(i);
                double tip = u[SHARED + i];
                double flow = factor * 29.7 * 0.875 * 0.875 * Math.sqrt(tip);
                double hundred = flow / 100;
                double feet = row.hose().get(0).length().feet();
                double pump = tip + (c * feet / 100 + k) * hundred * hundred + 0.434 * row.rise();
                int at = SHARED + 3 * i;
                residuals[at] = (pump + 2 * u[3] - row.pump()) / (1.0 * scatter.pump());
                residuals[at + 1] = (share * tip + u[4] - row.tip()) / (0.5 * scatter.tip());
                residuals[at + 2] = Math.log(flow * meter / row.flow()) / (0.0125 * scatter.flow());
            }
            return residuals;
        }
    }
}
