package org.hosewright.hydraulics.network;

import java.util.Arrays;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.OneWay;

/** Which nodes water can get to: each needs a fixed head to hang on, and a demand a way that its water may take. */
final class Reachable {
    private final Network network;
    private final int[] start;
    private final int[] near;

    private Reachable(Network network) {
        this.network = network;
        start = new int[network.nodes() + 1];
        near = new int[2 * network.links()];
        for (int k = 0; k < network.links(); k++) {
            start[network.from(k) + 1]++;
            start[network.to(k) + 1]++;
        }
        for (int i = 0; i < network.nodes(); i++) {
            start[i + 1] += start[i];
        }
        int[] next = start.clone();
        for (int k = 0; k < network.links(); k++) {
            near[next[network.from(k)]++] = k;
            near[next[network.to(k)]++] = k;
        }
    }

    /** Refuses, by its name, a node that hangs on no fixed head, or a demand that no water can come to. */
    static void require(Network network) {
        Reachable reachable = new Reachable(network);
        boolean[] joined = reachable.spread(0, true);
        boolean[] supplied = reachable.spread(1, false);
        boolean[] drained = reachable.spread(-1, false);
        for (int i = 0; i < network.nodes(); i++) {
            double demand = network.demand_m3s(i);
            if (!joined[i]) {
                throw new InvalidInput("node", network.nodeName(i), "one joined by links to a fixed head", "network");
            }
            if ((demand > 0 && !supplied[i]) || (demand < 0 && !drained[i])) {
                throw new InvalidInput(
                        "demand at",
                        network.nodeName(i),
                        "a node that water can flow to past the one-way pieces",
                        "network");
            }
        }
    }

    /** Nodes that are reached from a fixed head or a source, along the flow (1), against it (-1) or either way (0). */
    private boolean[] spread(int way, boolean fixedOnly) {
        int[] queue = new int[network.nodes()];
        boolean[] seen = new boolean[network.nodes()];
        int count = 0;
        for (int i = 0; i < queue.length; i++) {
            if (network.isFixed(i) || (!fixedOnly && way * network.demand_m3s(i) < 0)) {
                seen[i] = true;
                queue[count++] = i;
            }
        }
        for (int at = 0; at < count; at++) {
            int node = queue[at];
            for (int k : Arrays.copyOfRange(near, start[node], start[node + 1])) {
                boolean along = network.from(k) == node;
                int other = along ? network.to(k) : network.from(k);
                boolean barred = network.law(k) instanceof OneWay && way != 0 && along != (way > 0);
                if (!barred && !seen[other]) {
                    seen[other] = true;
                    queue[count++] = other;
                }
            }
        }
        return seen;
    }
}
