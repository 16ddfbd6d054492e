package org.hosewright.hydraulics.network;

import java.util.Arrays;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.sparse.LaplacianFactor;

/** A solved network made straight where it stands: one factor that answers how anything moves with anything.
 *
 * <p>The matrix is its own mirror image, so one solve with the answer asked for on the right gives that answer's
 * derivative by every number of the network.
 */
final class Tangent {
    /** Slope of a piece that loses no more with more flow, and of a shut one, as shares of pressure over flow [1]. */
    private static final double LEAST = 1e-9;

    private static final double SHUT = 1e14;

    private final Network network;
    private final Shape shape;
    /** One over the slope of each link where it stands. */
    private final double[] conductance;

    private final double[] flow;
    private final LaplacianFactor factor;

    Tangent(Network network, double[] heads, double[] flows) {
        this.network = network;
        shape = Compiled.shape(network);
        flow = flows;
        conductance = new double[flows.length];
        factor = new LaplacianFactor(shape.pattern());
        double unit = unit(heads);
        for (int k = 0; k < conductance.length; k++) {
            Law law = network.law(k);
            boolean shut = law instanceof OneWay && flows[k] <= 0;
            conductance[k] = 1 / (shut ? SHUT * unit : Math.max(LEAST * unit, law.slope(flows[k])));
            factor.entries()[shape.slot()[k]] += conductance[k];
            factor.ground()[shape.ground()[k]] += conductance[k];
        }
        factor.factor(new double[shape.nodes()]);
    }

    /** Derivatives of a node's head. */
    Derivatives ofHead(int node) {
        double[] pull = new double[shape.nodes()];
        pull[shape.placeOf(node)] = 1;
        double[] direct = new double[flow.length];
        return derivatives(pull, direct);
    }

    /** Derivatives of a link's flow. */
    Derivatives ofFlow(int link) {
        double[] pull = new double[shape.nodes()];
        pull[shape.from()[link]] += conductance[link];
        pull[shape.to()[link]] -= conductance[link];
        double[] direct = new double[flow.length];
        direct[link] = -conductance[link];
        return derivatives(pull, direct);
    }

    private Derivatives derivatives(double[] pull, double[] direct) {
        double[] byHead = Arrays.copyOfRange(pull, shape.free(), pull.length);
        Arrays.fill(pull, shape.free(), pull.length, 0);
        factor.solve(pull);
        for (int k = 0; k < flow.length; k++) {
            int from = shape.from()[k];
            int to = shape.to()[k];
            direct[k] += (pull[from] - pull[to]) * conductance[k];
            if (from >= shape.free()) {
                byHead[from - shape.free()] += pull[to] * conductance[k];
            }
            if (to >= shape.free()) {
                byHead[to - shape.free()] += pull[from] * conductance[k];
            }
        }
        double[] byNode = new double[shape.nodes()];
        for (int i = 0; i < byNode.length; i++) {
            int place = shape.placeOf(i);
            byNode[i] = place < shape.free() ? -pull[place] : byHead[place - shape.free()];
        }
        return new Derivatives(network, flow, direct, byNode);
    }

    private double unit(double[] heads) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double head : heads) {
            low = Math.min(low, head);
            high = Math.max(high, head);
        }
        double largest = 0;
        for (double at : flow) {
            largest = Math.max(largest, Math.abs(at));
        }
        return Math.max(1, high - low) / (largest > 0 ? largest : 1);
    }
}
