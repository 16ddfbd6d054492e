package org.hosewright.evidence.calibration;

import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.evidence.joint.Cloud;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.joint.Unknowns;

/** The resistance of a line as it is added up: its value, and its slopes by the unknowns. */
final class Sum {
    private final Unknowns unknowns;
    private final double[] point;
    private final Optional<Cloud> cloud;
    private final double[] slopes;
    private double value;

    /** An empty sum.
     *
     * @param point the unknowns
     * @param cloud how uncertain they are, where that is reckoned in
     */
    Sum(Unknowns unknowns, double[] point, Optional<Cloud> cloud) {
        this.unknowns = unknowns;
        this.point = point.clone();
        this.cloud = cloud;
        this.slopes = new double[unknowns.size()];
    }

    double total() {
        return value;
    }

    double[] slopes() {
        return slopes.clone();
    }

    Unknown unknown(int place) {
        return unknowns.get(place);
    }

    double value(int place) {
        return unknowns.get(place).value(point[place]);
    }

    /** Adds a weighted loss.
     *
     * @param factor the tip's factor whose square multiplies it
     * @return false where the night did not meet it
     */
    boolean add(Role role, String id, double weight, OptionalInt factor) {
        OptionalInt found = unknowns.find(role, id);
        if (found.isEmpty()) {
            return false;
        }
        int place = found.getAsInt();
        double more = cloud.isPresent() ? more(cloud.get(), place, factor) : 0;
        value += weight * (value(place) + more);
        slopes[place] += weight * unknowns.get(place).slope(point[place]);
        return true;
    }

    /** By how much the mean of loss times squared factor, over the middle's squared factor, lies above the middle's loss. */
    private double more(Cloud belief, int place, OptionalInt factor) {
        Unknown unknown = unknowns.get(place);
        double[] form = new double[point.length];
        double twice = factor.isPresent() ? 2 * unknowns.get(factor.getAsInt()).deviation() : 0;
        factor.ifPresent(f -> form[f] = twice);
        double ofFactor = belief.variance(form);
        if (unknown.role().isLogarithmic()) {
            form[place] = unknown.deviation();
            return value(place) * (Math.exp(belief.variance(form) / 2) - 1);
        }
        double shared =
                factor.isPresent() ? twice * unknown.deviation() * belief.covariance(place, factor.getAsInt()) : 0;
        return shared + value(place) * ofFactor / 2;
    }
}
