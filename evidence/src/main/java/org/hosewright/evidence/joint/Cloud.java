package org.hosewright.evidence.joint;

import java.util.List;
import org.hosewright.evidence.fit.Minimum;

/** A normal belief about several unknowns at once: where it is, and how wide. */
public final class Cloud {
    private final double[] mean;
    private final double[][] covariance;

    Cloud(double[] mean, double[][] covariance) {
        this.mean = mean.clone();
        this.covariance = new double[covariance.length][];
        for (int i = 0; i < covariance.length; i++) {
            this.covariance[i] = covariance[i].clone();
        }
    }

    /** A mixture of beliefs, kept by its mean and covariance.
     *
     * @param clouds beliefs about the same unknowns; not empty
     * @param weights of each, above 0
     */
    static Cloud mixed(List<Cloud> clouds, List<Double> weights) {
        double total = weights.stream().mapToDouble(Double::doubleValue).sum();
        int n = clouds.get(0).size();
        double[] mean = new double[n];
        for (int k = 0; k < clouds.size(); k++) {
            for (int i = 0; i < n; i++) {
                mean[i] += weights.get(k) / total * clouds.get(k).mean[i];
            }
        }
        double[][] spread = new double[n][n];
        for (int k = 0; k < clouds.size(); k++) {
            clouds.get(k).spread(mean, weights.get(k) / total, spread);
        }
        return new Cloud(mean, spread);
    }

    private void spread(double[] about, double weight, double[][] into) {
        for (int i = 0; i < about.length; i++) {
            for (int j = 0; j < about.length; j++) {
                double apart = (mean[i] - about[i]) * (mean[j] - about[j]);
                into[i][j] += weight * (covariance[i][j] + apart);
            }
        }
    }

    public int size() {
        return mean.length;
    }

    /** A copy of the mean. */
    public double[] mean() {
        return mean.clone();
    }

    public double mean(int i) {
        return mean[i];
    }

    public double covariance(int i, int j) {
        return covariance[i][j];
    }

    public double deviation(int i) {
        return Math.sqrt(covariance[i][i]);
    }

    /** Variance of a linear form. */
    public double variance(double[] form) {
        return Math.max(0, Minimum.quadratic(form, covariance));
    }

    /** Moves the belief along one unknown: its mean by a shift, its variance to a new one; the others follow.
     *
     * @param i the unknown
     * @param newMean its mean afterwards
     * @param newVariance its variance afterwards
     */
    Cloud told(int i, double newMean, double newVariance) {
        int n = mean.length;
        double variance = covariance[i][i];
        double[] moved = new double[n];
        double[][] narrowed = new double[n][n];
        for (int j = 0; j < n; j++) {
            double share = covariance[j][i] / variance;
            moved[j] = mean[j] + share * (newMean - mean[i]);
            for (int k = 0; k < n; k++) {
                narrowed[j][k] = covariance[j][k] + share * (newVariance - variance) * covariance[i][k] / variance;
            }
        }
        return new Cloud(moved, narrowed);
    }
}
