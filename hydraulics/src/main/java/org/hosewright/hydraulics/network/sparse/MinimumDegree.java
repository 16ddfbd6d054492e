package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;

/** The order in which to take the nodes of a graph out so that few new neighbours arise: least approximate degree first.
 *
 * <p>A quotient graph: a node taken out becomes an element, the clique of what it leaves behind, and swallows the
 * elements it touched; the graph never grows. The cliques are the columns of the factor.
 *
 * @source P. Amestoy, T. Davis, I. Duff, An approximate minimum degree ordering algorithm, 1996; A. George and J. Liu,
 *     Computer Solution of Large Sparse Positive Definite Systems, 1981
 */
final class MinimumDegree {
    private final int size;
    private final int[] start;
    private final int[] near;
    private final int[] elements;
    private final int[] variables;
    private final int[] order;
    private final int[] columnStart;
    private int[] columns;

    /** Where among the columns the members of each element stand, and how many there are: none once swallowed. */
    private final int[] member;

    private final int[] members;
    private final int[] mark;
    private final int[] outside;
    private final int[] counted;
    private final Buckets buckets;
    private int tag;
    private int taken;

    /** Orders a graph, whose arrays are used up. */
    MinimumDegree(Graph graph) {
        size = graph.size();
        start = graph.start();
        near = graph.near();
        elements = new int[size];
        variables = new int[size];
        order = new int[size];
        columnStart = new int[size + 1];
        columns = new int[4 * near.length + size];
        member = new int[size];
        members = new int[size];
        mark = new int[size];
        outside = new int[size];
        counted = new int[size];
        buckets = new Buckets(size);
        for (int i = 0; i < size; i++) {
            variables[i] = start[i + 1] - start[i];
            buckets.put(i, variables[i]);
        }
        while (taken < size) {
            takeLeast();
        }
    }

    /** Nodes in the order they are taken out. */
    int[] order() {
        return order;
    }

    /** Where the column of each node taken out begins; one more at the end. */
    int[] columnStart() {
        return columnStart;
    }

    /** The nodes left beside each node taken out, as it was taken. */
    int[] columns() {
        return columns;
    }

    private void takeLeast() {
        int pivot = buckets.takeLeast();
        int from = columnStart[taken];
        int end = clique(pivot, from);
        member[pivot] = from;
        members[pivot] = end - from;
        take(pivot, end);
        if (end - from == size - taken) {
            takeRest(from, end);
            return;
        }
        measureOutside(from, end);
        for (int at = from; at < end; at++) {
            int i = columns[at];
            int degree = prune(i, pivot, end - from);
            buckets.move(i, Math.min(Math.min(degree, buckets.degree(i) + end - from - 1), size - taken - 1));
        }
    }

    private void take(int node, int end) {
        order[taken++] = node;
        columnStart[taken] = end;
    }

    /** All that is left stands beside all else that is left: any order will do. */
    private void takeRest(int from, int to) {
        for (int at = from; at < to; at++) {
            int end = columnStart[taken];
            int count = to - at - 1;
            room(end + count);
            System.arraycopy(columns, at + 1, columns, end, count);
            take(columns[at], end + count);
        }
    }

    private void room(int count) {
        columns = count > columns.length ? Arrays.copyOf(columns, Math.max(count, 2 * columns.length)) : columns;
    }

    /** What the pivot touches, by itself and through its elements, which it swallows; gives its end among the columns. */
    private int clique(int pivot, int from) {
        tag++;
        mark[pivot] = tag;
        room(from + size - taken);
        int end = from;
        int first = start[pivot] + elements[pivot];
        for (int at = first; at < first + variables[pivot]; at++) {
            end = add(near[at], end);
        }
        for (int at = start[pivot]; at < first; at++) {
            int element = near[at];
            int to = member[element] + members[element];
            for (int p = member[element]; p < to; p++) {
                end = add(columns[p], end);
            }
            members[element] = 0;
        }
        return end;
    }

    private int add(int node, int end) {
        if (mark[node] == tag) {
            return end;
        }
        mark[node] = tag;
        columns[end] = node;
        return end + 1;
    }

    /** Counts, for every element that touches the clique, its members outside the clique. */
    private void measureOutside(int from, int end) {
        for (int c = from; c < end; c++) {
            int i = columns[c];
            for (int at = start[i]; at < start[i] + elements[i]; at++) {
                int element = near[at];
                if (counted[element] != tag) {
                    counted[element] = tag;
                    outside[element] = members[element];
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
