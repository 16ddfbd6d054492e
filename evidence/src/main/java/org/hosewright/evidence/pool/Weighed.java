package org.hosewright.evidence.pool;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a problem says, its spreads not known for sure: a mixture over a lattice of spreads, each weighed by how likely it is.
 *
 * <p>Without this the intervals of a few nights are too narrow: the likeliest spread of few is often 0.
 *
 * @source H. Rue, S. Martino, N. Chopin, Approximate Bayesian inference for latent Gaussian models, J. R. Stat. Soc. B 71,
 *     2009 (the lattice)
 */
final class Weighed {
    /** A lattice point is left out where its logarithm lies so far below the highest. */
    private static final double CUT = 6;

    private static final double STILL = 1e-3;
    private static final double PROBE = 0.2;
    private static final double LEAST_STEP = 0.1;
    private static final double MOST_STEP = 1;
    private static final int MOST_NODES = 300;

    private final Mixed problem;
    private final double[] scales;
    private final double[] likeliest;
    private final double top;
    private final double[] steps;
    private final List<Node> nodes = new ArrayList<>();

    /** What a problem says.
     *
     * @param scales what is believed of each spread beforehand: a half-normal law of this scale
     */
    Weighed(Mixed problem, double[] scales) {
        this.problem = problem;
        this.scales = scales.clone();
        double[] start = new double[scales.length];
        for (int s = 0; s < scales.length; s++) {
            start[s] = Math.log(scales[s] / 2);
        }
        likeliest = Ascent.top(this::density, start, 0.5, STILL);
        top = density(likeliest);
        steps = steps();
        gather();
    }

    /** A spread of the lattice.
     *
     * @param logs natural logarithms of the spreads, in order
     * @param solved the problem solved with them
     * @param weight their share of the whole
     */
    record Node(List<Double> logs, Solved solved, double weight) {}

    List<Node> nodes() {
        return nodes;
    }

    /** The problem solved with its likeliest spreads: for what hardly hangs on them. */
    Solved likeliest() {
        return problem.at(likeliest);
    }

    double[] likeliestLogs() {
        return likeliest.clone();
    }

    /** The mean of a spread, and its standard deviation. */
    Told spread(int spread) {
        double mean = 0;
        double square = 0;
        for (Node node : nodes) {
            double value = Math.exp(node.logs().get(spread));
            mean += node.weight() * value;
            square += node.weight() * value * value;
        }
        return new Told(mean, Math.sqrt(Math.max(0, square - mean * mean)));
    }

    private double density(double[] logs) {
        return problem.at(logs).likelihood() + belief(logs);
    }

    private double belief(double[] logs) {
        double sum = 0;
        for (int s = 0; s < logs.length; s++) {
            double multiple = Math.exp(logs[s]) / scales[s];
            sum += logs[s] - multiple * multiple / 2;
        }
        return sum;
    }

    private double[] steps() {
        double[] found = new double[likeliest.length];
        for (int s = 0; s < found.length; s++) {
            double curve = 0;
            for (double way : new double[] {-PROBE, PROBE}) {
                double[] beside = likeliest.clone();
                beside[s] += way;
                curve += (top - density(beside)) / (PROBE * PROBE);
            }
            found[s] = Math.min(MOST_STEP, Math.max(LEAST_STEP, 1 / Math.sqrt(Math.max(1e-6, curve))));
        }
        return found;
    }

    /** Walks over the lattice from the top outward as long as it is high enough. */
    private void gather() {
        Set<List<Integer>> seen = new LinkedHashSet<>();
        Deque<List<Integer>> open = new ArrayDeque<>();
        List<Node> raw = new ArrayList<>();
        List<Integer> middle = new ArrayList<>();
        for (int s = 0; s < steps.length; s++) {
            middle.add(0);
        }
        seen.add(middle);
        open.add(middle);
        while (!open.isEmpty() && raw.size() < MOST_NODES) {
            List<Integer> point = open.remove();
            double[] logs = logs(point);
            Solved solved = problem.at(logs);
            double height = solved.likelihood() + belief(logs) - top;
            if (height > -CUT) {
                raw.add(new Node(Arrays.stream(logs).boxed().toList(), solved, Math.exp(height)));
                beside(point).stream().filter(seen::add).forEach(open::add);
            }
        }
        double whole = raw.stream().mapToDouble(Node::weight).sum();
        raw.forEach(node -> nodes.add(new Node(node.logs(), node.solved(), node.weight() / whole)));
    }

    private double[] logs(List<Integer> point) {
        double[] logs = likeliest.clone();
        for (int s = 0; s < logs.length; s++) {
            logs[s] += steps[s] * point.get(s);
        }
        return logs;
    }

    private static List<List<Integer>> beside(List<Integer> point) {
        List<List<Integer>> beside = new ArrayList<>();
        for (int s = 0; s < point.size(); s++) {
            for (int way : new int[] {-1, 1}) {
                List<Integer> next = new ArrayList<>(point);
                next.set(s, next.get(s) + way);
                beside.add(next);
            }
        }
        return beside;
    }
}
