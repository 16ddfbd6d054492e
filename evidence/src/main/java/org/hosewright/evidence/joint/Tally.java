package org.hosewright.evidence.joint;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.fit.Minimum;

/** The misfit of a night's needles, and how many of them were free to misfit.
 *
 * <p>Each class of needles has the scatter whose square is the mean square of its misfit, what was believed beforehand counted
 * as {@link Priors#SCATTER_WORTH} readings more.
 */
final class Tally {
    private final Map<Channel, Double> squares = new EnumMap<>(Channel.class);
    private final Map<Channel, Double> spare = new EnumMap<>(Channel.class);

    Tally(Joint joint, Minimum minimum) {
        double[][] covariance = minimum.information().covariance();
        for (int i = 0; i < joint.lines().size(); i++) {
            List<Channel> channels = joint.lines().get(i).channels();
            double[] residuals = minimum.residuals(i + 1);
            double[] leverages = minimum.leverages(i + 1, covariance);
            for (int row = 0; row < residuals.length; row++) {
                Channel channel = channels.get(row);
                double off = residuals[row] * joint.scatter().of(channel);
                add(channel == Channel.MID ? Channel.PUMP : channel, off, leverages[row]);
            }
        }
    }

    private void add(Channel channel, double off, double leverage) {
        squares.merge(channel, off * off, Double::sum);
        spare.merge(channel, Math.max(0, 1 - leverage), Double::sum);
    }

    Scatter freedom() {
        return new Scatter(freedom(Channel.PUMP), freedom(Channel.TIP), freedom(Channel.FLOW));
    }

    Scatter scatter() {
        return new Scatter(scatter(Channel.PUMP), scatter(Channel.TIP), scatter(Channel.FLOW));
    }

    private double freedom(Channel channel) {
        return Priors.SCATTER_WORTH + spare.getOrDefault(channel, 0.0);
    }

    private double scatter(Channel channel) {
        double sum = Priors.SCATTER_WORTH + squares.getOrDefault(channel, 0.0);
        return Math.sqrt(sum / freedom(channel));
    }
}
