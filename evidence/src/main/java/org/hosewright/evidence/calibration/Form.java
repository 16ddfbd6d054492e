package org.hosewright.evidence.calibration;

import java.util.Optional;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.joint.Cloud;
import org.hosewright.evidence.joint.Posterior;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.joint.Unknowns;

/** An answer with its slopes by the unknowns, and what it owes to things that the night did not touch. */
final class Form {
    /** A night's readings must at least halve what was believed beforehand. */
    private static final double HALVED = 0.5;

    /** Deviation of a half-normal of unit width: sqrt(1 - 2/pi). */
    private static final double HALF_NORMAL = Math.sqrt(1 - 2 / Math.PI);

    /** A side tap's blind share that is known this well settles the flow scale: 1 % of flow. */
    static final double TAP_KNOWN = 0.02;

    /** The share of an answer's variance that may hang on a side tap of unknown diameter. */
    private static final double TAP_SHARE = 0.2;

    private final double value;
    private final double[] slopes;
    private final double strange;

    /** Makes an answer.
     *
     * @param value the answer in SI
     * @param slopes by unknown, in prior standard deviations; the form's own from here on
     * @param strange variance from what the night did not touch
     */
    Form(double value, double[] slopes, double strange) {
        this.value = value;
        this.slopes = slopes;
        this.strange = strange;
    }

    /** One unknown's value; where its logarithm is normal, the mean lies a little above the middle. */
    static Form unknown(Unknowns unknowns, Cloud cloud, int place) {
        Unknown unknown = unknowns.get(place);
        double middle = unknown.value(cloud.mean(place));
        double width = unknown.deviation() * cloud.deviation(place);
        double value = unknown.role().isLogarithmic() ? middle * Math.exp(width * width / 2) : middle;
        double[] slopes = new double[unknowns.size()];
        slopes[place] = unknown.role().isLogarithmic() ? unknown.deviation() * value : unknown.deviation();
        return new Form(value, slopes, 0);
    }

    double value() {
        return value;
    }

    /** A copy of its slopes by the unknowns. */
    double[] slopes() {
        return slopes.clone();
    }

    /** Variance under a belief. */
    double variance(Cloud cloud) {
        return cloud.variance(slopes) + strange;
    }

    /** Variance under a covariance of the unknowns. */
    double variance(double[][] covariance) {
        return Minimum.quadratic(slopes, covariance) + strange;
    }

    double deviation(Posterior posterior) {
        return Math.sqrt(variance(posterior.cloud()));
    }

    /** True where the readings, without what was believed of hose and piping, tell the answer. */
    boolean isTold(Posterior posterior, Unknowns unknowns) {
        double alone = Math.sqrt(variance(posterior.readingsAlone()));
        return alone <= HALVED * beforehand(unknowns)
                && findTapInTheWay(posterior, unknowns).isEmpty();
    }

    private double beforehand(Unknowns unknowns) {
        double sum = strange;
        for (int i = 0; i < slopes.length; i++) {
            double width = unknowns.get(i).role() == Role.PIPING ? HALF_NORMAL : 1;
            sum += slopes[i] * slopes[i] * width * width;
        }
        return Math.sqrt(sum);
    }

    /** The side tap of unknown diameter that the answer hangs on. */
    Optional<Integer> findTapInTheWay(Posterior posterior, Unknowns unknowns) {
        double variance = variance(posterior.cloud());
        for (int tap : unknowns.listOf(Role.TAP)) {
            double shared = 0;
            for (int i = 0; i < slopes.length; i++) {
                shared += slopes[i] * posterior.cloud().covariance(i, tap);
            }
            double known = unknowns.get(tap).deviation() * posterior.cloud().deviation(tap);
            double part = shared * shared / (variance * posterior.cloud().covariance(tap, tap));
            if (known > TAP_KNOWN && part > TAP_SHARE) {
                return Optional.of(tap);
            }
        }
        return Optional.empty();
    }
}
