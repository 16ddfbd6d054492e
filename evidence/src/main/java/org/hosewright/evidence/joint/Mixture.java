package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.fit.LevenbergMarquardt;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.probability.Normal;

/** A belief mixed over how much the needles may scatter, each scatter weighed by how well it explains the readings.
 *
 * <p>Scatters are taken along each needle's own axis first, then together where they are not next to impossible. A scatter known
 * from few readings may well be far larger than the likeliest, hardly far smaller: the nodes reach further up.
 */
final class Mixture {
    private static final double[] PUMP = {0, -2.4, -1.2, 1.2, 2.4, 3.6};
    private static final double[] OTHER = {0, -1.6, 1.6, 3.2};
    private static final double[] NOT_READ = {0};

    /** What may be left to remove of the cost at a node: a hundredth of a deviation at the very most. */
    private static final double NEAR = 1e-4;

    /** Logarithm of the odds, against the likeliest scatter, below which one is passed over. */
    private static final double IMPOSSIBLE = Math.log(0.002);

    private final Fit fit;
    private final List<Cloud> clouds = new ArrayList<>();
    private final List<Double> evidence = new ArrayList<>();

    Mixture(Fit fit) {
        this.fit = fit;
    }

    Cloud cloud() {
        double[] pump = axis(Channel.PUMP, PUMP);
        double[] tip = axis(Channel.TIP, OTHER);
        double[] flow = axis(Channel.FLOW, OTHER);
        for (int f = 0; f < flow.length; f++) {
            for (int t = 0; t < tip.length; t++) {
                for (int p = 0; p < pump.length; p++) {
                    boolean several = (f > 0 ? 1 : 0) + (t > 0 ? 1 : 0) + (p > 0 ? 1 : 0) > 1;
                    if (several && pump[p] + tip[t] + flow[f] > IMPOSSIBLE) {
                        add(PUMP[p], OTHER[t], OTHER[f]);
                    }
                }
            }
        }
        double best = evidence.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        return Cloud.mixed(
                clouds, evidence.stream().map(each -> Math.exp(each - best)).toList());
    }

    /** The nodes of one needle's axis, as logarithms of the odds against the likeliest; the likeliest counts once. */
    private double[] axis(Channel channel, double[] all) {
        boolean read = fit.joint().lines().stream().anyMatch(line -> line.has(channel));
        double[] nodes = read ? all : NOT_READ;
        double[] odds = new double[nodes.length];
        for (int i = channel == Channel.PUMP ? 0 : 1; i < nodes.length; i++) {
            double step = nodes[i];
            add(
                    channel == Channel.PUMP ? step : 0,
                    channel == Channel.TIP ? step : 0,
                    channel == Channel.FLOW ? step : 0);
            odds[i] = evidence.get(evidence.size() - 1) - evidence.get(0);
        }
        return odds;
    }

    /** Adds the belief for scatters so many of their own standard deviations (of the logarithm) from the likeliest. */
    private void add(double pump, double tip, double flow) {
        Scatter middle = fit.joint().scatter();
        Scatter freedom = fit.freedom();
        Scatter scatter = new Scatter(
                middle.pump() * Math.exp(pump / Math.sqrt(2 * freedom.pump())),
                middle.tip() * Math.exp(tip / Math.sqrt(2 * freedom.tip())),
                middle.flow() * Math.exp(flow / Math.sqrt(2 * freedom.flow())));
        Joint joint = fit.joint().with(scatter);
        Minimum minimum = new LevenbergMarquardt(joint.blocks(), 0, NEAR)
                .solve(fit.minimum().point());
        Cloud free = new Cloud(minimum.point().unknowns(), minimum.information().covariance());
        List<Integer> piping = joint.unknowns().listOf(Role.PIPING);
        double explained = Fit.evidence(joint, minimum);
        for (int place : piping) {
            explained += Math.log(Math.max(1e-300, Normal.cumulative(free.mean(place) / free.deviation(place))));
        }
        clouds.add(Bounded.notNegative(free, piping));
        evidence.add(explained);
    }
}
