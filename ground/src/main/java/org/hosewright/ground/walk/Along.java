package org.hosewright.ground.walk;

import java.util.List;
import java.util.SplittableRandom;

/** Distances from the start to every step, with how well they are known: an ensemble that measured lengths correct.
 *
 * <p>A measured length moves every distance by its regression on the one that was measured.
 *
 * @source G. Evensen, Sequential data assimilation, Journal of Geophysical Research 99, 1994 (the update)
 */
final class Along {
    private static final long SEED = 20_260_513;

    /** How much wider than the model says: people walk straight legs at one speed and turn at corners, which the model
     * does not know. Found on simulated walks, see the tests. */
    static final double WIDER = 1.6;

    private final double[][] members_m;

    Along(List<Way> ways) {
        members_m = new double[ways.size()][];
        for (int i = 0; i < members_m.length; i++) {
            members_m[i] = ways.get(i).along_m();
        }
        for (int step = 0; step < size(); step++) {
            double mean_m = mean_m(step);
            for (double[] member : members_m) {
                member[step] = mean_m + WIDER * (member[step] - mean_m);
            }
        }
    }

    int size() {
        return members_m[0].length;
    }

    double mean_m(int step) {
        double sum = 0;
        for (double[] member : members_m) {
            sum += member[step];
        }
        return sum / members_m.length;
    }

    /** Standard error of the distance to a step [m]. */
    double error_m(int step) {
        return Math.sqrt(covariance(step, step));
    }

    private double covariance(int one, int other) {
        double meanOne = mean_m(one);
        double meanOther = mean_m(other);
        double sum = 0;
        for (double[] member : members_m) {
            sum += (member[one] - meanOne) * (member[other] - meanOther);
        }
        return sum / (members_m.length - 1);
    }

    /** Takes in that the distance to a step was measured. */
    void measured(int step, MeasuredLength measured) {
        double length_m = measured.length().metres();
        double error_m = measured.standardError().metres();
        double variance = covariance(step, step) + error_m * error_m;
        double[] off = new double[members_m.length];
        SplittableRandom random = new SplittableRandom(SEED + step);
        double mean = 0;
        for (int i = 0; i < off.length; i++) {
            off[i] = error_m * random.nextGaussian();
            mean += off[i] / off.length;
        }
        for (int i = 0; i < off.length; i++) {
            off[i] = length_m + off[i] - mean - members_m[i][step];
        }
        double[] gain = new double[size()];
        for (int at = 0; at < gain.length; at++) {
            gain[at] = variance > 0 ? covariance(at, step) / variance : 0;
        }
        for (int i = 0; i < off.length; i++) {
            for (int at = 0; at < gain.length; at++) {
                members_m[i][at] += gain[at] * off[i];
            }
        }
    }
}
