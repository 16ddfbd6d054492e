package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.fit.LevenbergMarquardt;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.fit.Point;
import org.hosewright.evidence.probability.Normal;

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
    private static final double[] PUMP_NODES = {-2.4, -1.2, 0, 1.2, 2.4};
    private static final double[] OTHER_NODES = {-1.6, 0, 1.6};
    private static final double[] NOT_READ = {0};

    /** What may be left to remove of the cost at a node: a hundredth of a deviation at the very most. */
    private static final double NEAR = 1e-4;

    /** The belief after a fit. */
    public static Posterior of(Fit fit) {
        List<Node> nodes = new ArrayList<>();
        Point from = fit.minimum().point();
        for (double flow : isRead(fit, Channel.FLOW) ? OTHER_NODES : NOT_READ) {
            for (double tip : isRead(fit, Channel.TIP) ? OTHER_NODES : NOT_READ) {
                for (double pump : PUMP_NODES) {
                    nodes.add(Node.of(fit.joint().with(scatter(fit, pump, tip, flow)), from));
                }
            }
        }
        return new Posterior(fit, Node.mixed(nodes), alone(fit));
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

    private static boolean isRead(Fit fit, Channel channel) {
        return fit.joint().lines().stream().anyMatch(line -> line.has(channel));
    }

    /** The scatter so many of its own standard deviations (of the logarithm) from the most likely. */
    private static Scatter scatter(Fit fit, double pump, double tip, double flow) {
        Scatter middle = fit.joint().scatter();
        Scatter freedom = fit.freedom();
        return new Scatter(
                middle.pump() * Math.exp(pump / Math.sqrt(2 * freedom.pump())),
                middle.tip() * Math.exp(tip / Math.sqrt(2 * freedom.tip())),
                middle.flow() * Math.exp(flow / Math.sqrt(2 * freedom.flow())));
    }

    private static Cloud alone(Fit fit) {
        Point point = fit.minimum().point();
        Minimum doubting = LevenbergMarquardt.at(fit.joint().doubtingLines().blocks(), point);
        return new Cloud(point.unknowns(), doubting.information().covariance());
    }

    /** The belief for one scatter.
     *
     * @param cloud the belief
     * @param evidence logarithm of how well this scatter explains the readings
     */
    private record Node(Cloud cloud, double evidence) {
        static Node of(Joint joint, Point from) {
            Minimum minimum = new LevenbergMarquardt(joint.blocks(), 0, NEAR).solve(from);
            Cloud free =
                    new Cloud(minimum.point().unknowns(), minimum.information().covariance());
            List<Integer> piping = joint.unknowns().listOf(Role.PIPING);
            double evidence = Fit.evidence(joint, minimum);
            for (int place : piping) {
                evidence += Math.log(Math.max(1e-300, Normal.cumulative(free.mean(place) / free.deviation(place))));
            }
            return new Node(Bounded.notNegative(free, piping), evidence);
        }

        static Cloud mixed(List<Node> nodes) {
            double best = nodes.stream().mapToDouble(Node::evidence).max().orElseThrow();
            int n = nodes.get(0).cloud.size();
            double[] mean = new double[n];
            double total = 0;
            for (Node node : nodes) {
                double weight = Math.exp(node.evidence - best);
                total += weight;
                for (int i = 0; i < n; i++) {
                    mean[i] += weight * node.cloud.mean(i);
                }
            }
            for (int i = 0; i < n; i++) {
                mean[i] /= total;
            }
            return new Cloud(mean, spread(nodes, best, total, mean));
        }

        private static double[][] spread(List<Node> nodes, double best, double total, double[] mean) {
            double[][] spread = new double[mean.length][mean.length];
            for (Node node : nodes) {
                double weight = Math.exp(node.evidence - best) / total;
                for (int i = 0; i < mean.length; i++) {
                    for (int j = 0; j < mean.length; j++) {
                        double apart = (node.cloud.mean(i) - mean[i]) * (node.cloud.mean(j) - mean[j]);
                        spread[i][j] += weight * (node.cloud.covariance(i, j) + apart);
                    }
                }
            }
            return spread;
        }
    }
}
