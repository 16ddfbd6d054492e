package org.hosewright.hydraulics.network;

/** The links at each node of a network, node by node. */
final class Beside {
    private final int[] start;
    private final int[] near;

    Beside(Network network) {
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

    /** Where the links of a node begin; those of the next node follow. */
    int from(int node) {
        return start[node];
    }

    int link(int at) {
        return near[at];
    }
}
