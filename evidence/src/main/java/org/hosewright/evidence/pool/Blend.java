package org.hosewright.evidence.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hosewright.evidence.probability.Normal;

/** Each unknown's mean and deviation, over all spreads of a lattice.
 *
 * <p>The deviation is the one whose 1.96-fold to both sides holds 95 % of the mixture, which has heavier tails than a normal law of
 * its variance where a spread is hardly known.
 */
final class Blend {
    private static final double TWO_SIDED = 1.96;
    private static final double HELD = 2 * Normal.cumulative(TWO_SIDED) - 1;
    private static final int STEPS = 30;
    private static final double STILL = 1e-6;

    private final List<Part> parts = new ArrayList<>();

    private Blend() {}

    /** One lattice point's law of each unknown. */
    private static final class Part {
        private final double weight;
        private final double[] means;
        private final double[] variances;
        private final double batchVariance;

        Part(Weighed.Node node, Solved solved) {
            weight = node.weight();
            variances = solved.variances();
            means = new double[variances.length];
            for (int i = 0; i < means.length; i++) {
                means[i] = solved.mean(i);
            }
            batchVariance = Math.exp(2 * node.logs().get(Hierarchy.BATCHES));
        }

        double variance(int unknown, int batches) {
            return variances[unknown] + batches * batchVariance;
        }
    }

    /** The blend of lattice points.
     *
     * @param solved the problem solved with a point's spreads
     */
    static Blend of(List<Weighed.Node> nodes, Function<Weighed.Node, Solved> solved) {
        Blend blend = new Blend();
        nodes.forEach(node -> blend.parts.add(new Part(node, solved.apply(node))));
        return blend;
    }

    Told told(int unknown) {
        return told(unknown, 0);
    }

    /** A batch that nobody flew yet of the type whose mean is an unknown. */
    Told another(int type) {
        return told(type, 1);
    }

    private Told told(int unknown, int batches) {
        double mean = 0;
        double square = 0;
        for (Part part : parts) {
            double middle = part.means[unknown];
            mean += part.weight * middle;
            square += part.weight * (part.variance(unknown, batches) + middle * middle);
        }
        double half = TWO_SIDED * Math.sqrt(Math.max(0, square - mean * mean));
        for (int i = 0; i < STEPS; i++) {
            double next = Math.max(half / 2, half + step(unknown, batches, mean, half));
            boolean still = Math.abs(next - half) < STILL * half;
            half = next;
            if (still) {
                break;
            }
        }
        return new Told(mean, half / TWO_SIDED);
    }

    /** Newton's step toward the half-width that holds 95 %; what is held grows ever more slowly, so each ends short of it. */
    private double step(int unknown, int batches, double mean, double half) {
        double held = 0;
        double slope = 0;
        for (Part part : parts) {
            double deviation = Math.sqrt(part.variance(unknown, batches));
            double right = (half + mean - part.means[unknown]) / deviation;
            double left = (half - mean + part.means[unknown]) / deviation;
            held += part.weight * (Normal.cumulative(right) + Normal.cumulative(left) - 1);
            slope += part.weight * (Normal.density(right) + Normal.density(left)) / deviation;
        }
        return (HELD - held) / slope;
    }
}
