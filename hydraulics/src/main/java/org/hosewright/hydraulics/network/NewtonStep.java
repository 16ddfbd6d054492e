package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.network.law.OneWay;
import org.hosewright.hydraulics.network.sparse.Cholesky;

/** The steps of one solve: each link made straight at a flow, heads from mass balance, the move searched for length. */
final class NewtonStep {
    /** Flow that every link starts from [m3/s]. */
    private static final double START_M3S = 0.01;

    /** Least slope, as a share of head scale over flow scale [1]; it alters the rate, not the answer. */
    private static final double LEAST_SLOPE = 1e-5;

    private static final int SEARCHES = 60;

    private final Network network;
    private final int links;
    private final int[] unknown;
    private final double[] heads;
    private final double[] flows;
    private final double[] next;
    private final double[] move;
    private final double[] slope;
    private final double[] right;
    private final double scale_Pa;
    private final Cholesky matrix;
    private int worst;

    NewtonStep(Network network) {
        this.network = network;
        int nodes = network.listNodes().size();
        links = network.listLinks().size();
        unknown = new int[nodes];
        heads = new double[nodes];
        flows = new double[links];
        next = new double[links];
        move = new double[links];
        slope = new double[links];
        java.util.Arrays.fill(flows, START_M3S);
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        int free = 0;
        for (int i = 0; i < nodes; i++) {
            double head = network.head_Pa(i);
            unknown[i] = Double.isNaN(head) ? free++ : -1;
            low = Double.isNaN(head) ? low : Math.min(low, head);
            high = Double.isNaN(head) ? high : Math.max(high, head);
        }
        double gain = 0;
        for (int k = 0; k < links; k++) {
            gain = Math.max(gain, -network.law(k).loss_Pa(0));
        }
        scale_Pa = Math.max(1, high - low + gain);
        for (int i = 0; i < nodes; i++) {
            heads[i] = unknown[i] < 0 ? network.head_Pa(i) : (high + low) / 2;
        }
        right = new double[free];
        matrix = new Cholesky(free, ends());
    }

    /** Moves heads and flows once; the first move is taken whole, for it is the one that balances mass. */
    void take(boolean firstMove) {
        straighten(firstMove);
        matrix.factor();
        matrix.solve(right);
        for (int i = 0; i < heads.length; i++) {
            heads[i] += unknown[i] < 0 ? 0 : right[unknown[i]];
        }
        for (int k = 0; k < links; k++) {
            next[k] += (rise(network.from(k)) - rise(network.to(k))) / slope[k];
            move[k] = next[k] - flows[k];
        }
        double share = firstMove ? 1 : search();
        for (int k = 0; k < links; k++) {
            flows[k] = share == 1 ? next[k] : flows[k] + share * move[k];
        }
    }

    double massMisfit() {
        java.util.Arrays.fill(right, 0);
        for (int k = 0; k < links; k++) {
            add(network.from(k), flows[k]);
            add(network.to(k), -flows[k]);
        }
        double misfit = 0;
        for (double at : right) {
            misfit = Math.max(misfit, Math.abs(at));
        }
        return misfit / Math.max(largestFlow(), 1e-9);
    }

    double energyMisfit() {
        double misfit = 0;
        for (int k = 0; k < links; k++) {
            double off = Math.abs(drop(k) - network.law(k).loss_Pa(flows[k]));
            boolean shut = network.law(k) instanceof OneWay
                    && flows[k] <= 0
                    && drop(k) <= network.law(k).loss_Pa(0);
            if (!shut && !(off <= misfit)) {
                misfit = off;
                worst = k;
            }
        }
        return misfit / scale_Pa;
    }

    int worstLink() {
        return worst;
    }

    NetworkState state(NetworkState.Residuals residuals) {
        double[] found = flows.clone();
        for (int k = 0; k < links; k++) {
            found[k] = network.law(k) instanceof OneWay ? Math.max(0, found[k]) : found[k];
        }
        return new NetworkState(network, heads.clone(), found, residuals);
    }

    private void straighten(boolean firstMove) {
        matrix.clear();
        java.util.Arrays.fill(right, 0);
        double least = LEAST_SLOPE * scale_Pa / Math.max(largestFlow(), 1e-6);
        for (int k = 0; k < links; k++) {
            Law law = network.law(k);
            double at = flows[k];
            boolean opens = law instanceof OneWay && at <= 0 && drop(k) > law.loss_Pa(0);
            at = opens && !firstMove ? law.flow_m3s(drop(k)) : at;
            slope[k] = Math.max(least, law.slope(at));
            next[k] = at + (drop(k) - law.loss_Pa(at)) / slope[k];
            add(network.from(k), -next[k]);
            add(network.to(k), next[k]);
            stamp(unknown[network.from(k)], unknown[network.to(k)], 1 / slope[k]);
        }
    }

    private void stamp(int from, int to, double conductance) {
        if (from >= 0) {
            matrix.addDiagonal(from, conductance);
        }
        if (to >= 0) {
            matrix.addDiagonal(to, conductance);
        }
        if (from >= 0 && to >= 0) {
            matrix.addOff(from, to, -conductance);
        }
    }

    private double search() {
        if (downhill(0) <= 0 || downhill(1) >= 0) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < SEARCHES && high - low > 1e-3 * high; i++) {
            double middle = (low + high) / 2;
            if (downhill(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low > 0 ? low : high;
    }

    private double downhill(double share) {
        double sum = 0;
        for (int k = 0; k < links; k++) {
            sum += (drop(k) - network.law(k).loss_Pa(flows[k] + share * move[k])) * move[k];
        }
        return sum;
    }

    private double drop(int link) {
        return heads[network.from(link)] - heads[network.to(link)];
    }

    private double rise(int node) {
        return unknown[node] < 0 ? 0 : right[unknown[node]];
    }

    private void add(int node, double flow_m3s) {
        if (unknown[node] >= 0) {
            right[unknown[node]] += flow_m3s;
        }
    }

    private double largestFlow() {
        double largest = 0;
        for (double flow : flows) {
            largest = Math.max(largest, Math.abs(flow));
        }
        return largest;
    }

    private int[] ends() {
        int[] ends = new int[2 * links];
        int count = 0;
        for (int k = 0; k < links; k++) {
            int from = unknown[network.from(k)];
            int to = unknown[network.to(k)];
            if (from >= 0 && to >= 0) {
                ends[count++] = from;
                ends[count++] = to;
            }
        }
        return java.util.Arrays.copyOf(ends, count);
    }
}
