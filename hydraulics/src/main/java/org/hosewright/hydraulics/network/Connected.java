package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.error.InvalidInput;

/** Which nodes hang together with a fixed head. */
final class Connected {
    private Connected() {}

    /** Refuses a node that no chain of links joins to a fixed head, by its name. */
    static void require(Network network) {
        int size = network.listNodes().size();
        int[] root = new int[size + 1];
        for (int i = 0; i <= size; i++) {
            root[i] = i;
        }
        for (int i = 0; i < size; i++) {
            if (!Double.isNaN(network.head_Pa(i))) {
                root[top(root, i)] = top(root, size);
            }
        }
        for (int k = 0; k < network.listLinks().size(); k++) {
            root[top(root, network.from(k))] = top(root, network.to(k));
        }
        for (int i = 0; i < size; i++) {
            if (top(root, i) != top(root, size)) {
                throw new InvalidInput(
                        "node", network.listNodes().get(i), "one joined by links to a fixed head", "network");
            }
        }
    }

    private static int top(int[] root, int of) {
        int at = of;
        while (root[at] != at) {
            root[at] = root[root[at]];
            at = root[at];
        }
        return at;
    }
}
