package org.hosewright.evidence.joint;

import java.util.List;
import org.hosewright.evidence.probability.Normal;

/** A belief cut off where an unknown would fall below 0, kept by its mean and covariance.
 *
 * <p>Cutting one normal unknown is exact; where several are cut, each is cut in turn with the others' cuts in place, until
 * nothing moves (expectation propagation).
 *
 * @source T. Minka, Expectation Propagation for Approximate Bayesian Inference, 2001
 */
final class Bounded {
    private static final int SWEEPS = 30;
    private static final double STILL = 1e-9;

    private Bounded() {}

    /** The belief with some unknowns kept at 0 or above. */
    static Cloud notNegative(Cloud free, List<Integer> places) {
        Cloud cloud = free;
        double[] precision = new double[free.size()];
        double[] weight = new double[free.size()];
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double moved = 0;
            for (int i : places) {
                Cloud next = cut(cloud, i, precision, weight);
                moved = Math.max(moved, Math.abs(next.mean(i) - cloud.mean(i)) / cloud.deviation(i));
                cloud = next;
            }
            if (moved < STILL) {
                break;
            }
        }
        return cloud;
    }

    private static Cloud cut(Cloud cloud, int i, double[] precision, double[] weight) {
        double variance = cloud.covariance(i, i);
        double free = 1 / variance - precision[i];
        double mean = (cloud.mean(i) / variance - weight[i]) / free;
        double deviation = 1 / Math.sqrt(free);
        double above = mean / deviation;
        double hazard = Normal.hazard(above);
        double newMean = mean + deviation * hazard;
        double newVariance = Math.max(1e-12, 1 - hazard * (hazard + above)) / free;
        precision[i] = 1 / newVariance - free;
        weight[i] = newMean / newVariance - mean * free;
        return cloud.told(i, newMean, newVariance);
    }
}
