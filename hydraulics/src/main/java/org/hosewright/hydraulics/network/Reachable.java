package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.OneWay;

/** Which nodes water can get to: each needs a fixed head to hang on, and a demand a way that its water may take. */
final class Reachable {
    private final Network network;
    private final boolean[] oneWay;

    private Reachable(Network network) {
        this.network = network;
        oneWay = new boolean[network.links()];
        for (int k = 0; k < oneWay.length; k++) {
            oneWay[k] = network.law(k) instanceof OneWay;
        }
    }

    /** Refuses, by its name, a node that hangs on no fixed head, or a demand that no water can come to. */
    static void require(Network network) {
        Reachable reachable = new Reachable(network);
        if (!reachable.isOpen()) {
            reachable.require();
        }
    }

    /** Whether every node has a way to a fixed head that water may take either way: then nothing need be searched. */
    private boolean isOpen() {
        int[] above = new int[network.nodes() + 1];
        int fixed = network.nodes();
        for (int i = 0; i <= fixed; i++) {
            above[i] = i < fixed && network.isFixed(i) ? fixed : i;
        }
        for (int k = 0; k < oneWay.length; k++) {
            if (!oneWay[k]) {
                join(above, network.from(k), network.to(k));
            }
        }
        for (int i = 0; i < fixed; i++) {
            if (top(above, i) != fixed) {
                return false;
            }
        }
        return true;
    }

    /** Makes two trees one; the greater number stays on top. */
    private static void join(int[] above, int one, int other) {
        int a = top(above, one);
        int b = top(above, other);
        above[Math.min(a, b)] = Math.max(a, b);
    }

    private static int top(int[] above, int node) {
        int at = node;
        while (above[at] != at) {
            above[at] = above[above[at]];
            at = above[at];
        }
        return at;
    }

    private void require() {
        Beside beside = new Beside(network);
        boolean[] joined = spread(beside, 0, true);
        boolean[] supplied = spread(beside, 1, false);
        boolean[] drained = spread(beside, -1, false);
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
    private boolean[] spread(Beside beside, int way, boolean fixedOnly) {
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
            for (int p = beside.from(node); p < beside.from(node + 1); p++) {
                int k = beside.link(p);
                boolean along = network.from(k) == node;
                int other = along ? network.to(k) : network.from(k);
                boolean barred = oneWay[k] && way != 0 && along != (way > 0);
                if (!barred && !seen[other]) {
                    seen[other] = true;
                    queue[count++] = other;
                }
            }
        }
        return seen;
    }
}
