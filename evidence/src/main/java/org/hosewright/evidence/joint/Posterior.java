package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.fit.LevenbergMarquardt;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.fit.Point;

/** What a night lets one believe of its unknowns, with the scatter itself not known for sure.
 *
 * <p>The belief is a mixture over how much the gauges and the meter may scatter, each weighed by how well it explains the
 * readings; it is kept by its mean and covariance, so that 1.96 deviations hold 95 % though readings are few.
 *
 * @param fit the most likely
 * @param cloud the belief
 * @param readingsAlone the same with hardly anything believed of hose and piping beforehand: what cannot be told is wide in it
 */
public record Posterior(Fit fit, Cloud cloud, Cloud readingsAlone) {
    /** The belief after a fit. */
    public static Posterior of(Fit fit) {
        return new Posterior(fit, new Mixture(fit).cloud(), alone(fit));
    }

    /** The belief that readings would leave which are not taken yet: at a point, with the scatter that the instruments make one expect.
     *
     * @param u the unknowns that the readings are foretold with
     */
    public static Posterior foreseen(Joint joint, double[] u) {
        Fit fit = new Fit(joint, LevenbergMarquardt.at(joint.blocks(), joint.start(u)), Scatter.EXPECTED);
        double[][] covariance = fit.minimum().information().covariance();
        Cloud free = new Cloud(u, covariance);
        return new Posterior(fit, Bounded.notNegative(free, joint.unknowns().listOf(Role.PIPING)), alone(fit));
    }

    /** The same where other beliefs may be true instead.
     *
     * @param others those beliefs
     * @param odds of each against this one
     */
    public Posterior orElse(List<Posterior> others, List<Double> odds) {
        List<Cloud> clouds = new ArrayList<>(List.of(cloud));
        List<Double> weights = new ArrayList<>(List.of(1.0));
        others.forEach(other -> clouds.add(other.cloud));
        weights.addAll(odds);
        return new Posterior(fit, Cloud.mixed(clouds, weights), readingsAlone);
    }

    private static Cloud alone(Fit fit) {
        Point point = fit.minimum().point();
        Minimum doubting = LevenbergMarquardt.at(fit.joint().doubtingLines().blocks(), point);
        return new Cloud(point.unknowns(), doubting.information().covariance());
    }
}
