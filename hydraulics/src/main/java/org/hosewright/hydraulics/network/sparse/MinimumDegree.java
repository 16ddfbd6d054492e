package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;

/** The order in which to take the nodes of a graph out so that few new neighbours arise: least approximate degree first.
 *
 * <p>A quotient graph: a node taken out becomes an element, the clique of what it leaves behind, and swallows the
 * elements it touched; the graph never grows.
 *
 * @source P. Amestoy, T. Davis, I. Duff, An approximate minimum degree ordering algorithm, 1996; A. George and J. Liu,
 *     Computer Solution of Large Sparse Positive Definite Systems, 1981
 */
final class MinimumDegree {
    private static final int[] NONE = {};

    private final int size;
    private final int[] start;
    private final int[] near;
    private final int[] elements;
    private final int[] variables;
    private final int[][] members;
    private final int[] mark;
    private final int[] outside;
    private final int[] counted;
    private final Buckets buckets;
    private int tag;
    private int taken;

    private MinimumDegree(Graph graph) {
        size = graph.size();
        start = graph.start();
        near = graph.near();
        elements = new int[size];
        variables = new int[size];
        members = new int[size][];
        Arrays.fill(members, NONE);
        mark = new int[size];
        outside = new int[size];
        counted = new int[size];
        buckets = new Buckets(size);
        for (int i = 0; i < size; i++) {
            variables[i] = start[i + 1] - start[i];
            buckets.put(i, variables[i]);
        }
    }

    /** Nodes in the order they are taken out. */
    static int[] order(Graph graph) {
        MinimumDegree degree = new MinimumDegree(graph);
        int[] order = new int[degree.size];
        for (int k = 0; k < order.length; k++) {
            order[k] = degree.takeLeast();
        }
        return order;
    }

    private int takeLeast() {
        int pivot = buckets.takeLeast();
        int[] clique = clique(pivot);
        members[pivot] = clique;
        taken++;
        measureOutside(clique);
        for (int i : clique) {
            int degree = prune(i, pivot, clique.length);
            buckets.move(i, Math.min(Math.min(degree, buckets.degree(i) + clique.length - 1), size - taken - 1));
        }
        return pivot;
    }

    /** What the pivot touches, by itself and through its elements, which it swallows. */
    private int[] clique(int pivot) {
        tag++;
        mark[pivot] = tag;
        int[] found = new int[Math.min(size, reach(pivot))];
        int count = 0;
        int from = start[pivot] + elements[pivot];
        for (int at = from; at < from + variables[pivot]; at++) {
            count = add(near[at], found, count);
        }
        for (int at = start[pivot]; at < from; at++) {
            int element = near[at];
            for (int i : members[element]) {
                count = add(i, found, count);
            }
            members[element] = NONE;
        }
        return Arrays.copyOf(found, count);
    }

    private int reach(int pivot) {
        int reach = variables[pivot];
        for (int at = start[pivot]; at < start[pivot] + elements[pivot]; at++) {
            reach += members[near[at]].length;
        }
        return reach;
    }

    private int add(int node, int[] found, int count) {
        if (mark[node] == tag) {
            return count;
        }
        mark[node] = tag;
        found[count] = node;
        return count + 1;
    }

    /** Counts, for every element that touches the clique, its members outside the clique; below 0 when swallowed. */
    private void measureOutside(int[] clique) {
        for (int i : clique) {
            for (int at = start[i]; at < start[i] + elements[i]; at++) {
                int element = near[at];
                if (counted[element] != tag) {
                    counted[element] = tag;
                    outside[element] = members[element].length;
                }
                outside[element]--;
            }
        }
    }

    /** Renews what a member of the clique touches; gives its degree, never too small. */
    private int prune(int i, int pivot, int clique) {
        int first = start[i];
        int to = first;
        int degree = clique - 1;
        for (int at = first; at < first + elements[i]; at++) {
            int element = near[at];
            if (outside[element] > 0) {
                near[to++] = element;
                degree += outside[element];
            }
        }
        int variablesFrom = to;
        for (int at = first + elements[i]; at < first + elements[i] + variables[i]; at++) {
            if (mark[near[at]] != tag) {
                near[to++] = near[at];
                degree++;
            }
        }
        near[to] = near[variablesFrom];
        near[variablesFrom] = pivot;
        elements[i] = variablesFrom - first + 1;
        variables[i] = to - variablesFrom;
        return degree;
    }
}
