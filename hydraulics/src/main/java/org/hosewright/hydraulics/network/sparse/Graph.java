package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;

/** Which rows of a symmetric matrix stand beside which: each pair once, none beside itself. */
final class Graph {
    private final int size;
    private final int[] start;
    private final int[] near;

    private Graph(int size, int[] start, int[] near) {
        this.size = size;
        this.start = start;
        this.near = near;
    }

    /** Gathers pairs of rows, given two numbers each; a pair may come more than once. */
    static Graph of(int size, int[] ends) {
        int[] start = new int[size + 1];
        for (int end : ends) {
            start[end + 1]++;
        }
        for (int i = 0; i < size; i++) {
            start[i + 1] += start[i];
        }
        int[] next = Arrays.copyOf(start, size);
        int[] near = new int[ends.length];
        for (int e = 0; e + 1 < ends.length; e += 2) {
            near[next[ends[e]]++] = ends[e + 1];
            near[next[ends[e + 1]]++] = ends[e];
        }
        return single(size, start, near);
    }

    int size() {
        return size;
    }

    int[] start() {
        return start;
    }

    int[] near() {
        return near;
    }

    private static Graph single(int size, int[] start, int[] near) {
        int[] seenBy = new int[size];
        Arrays.fill(seenBy, -1);
        int count = 0;
        for (int i = 0; i < size; i++) {
            int from = start[i];
            start[i] = count;
            seenBy[i] = i;
            for (int at = from; at < start[i + 1]; at++) {
                int other = near[at];
                if (seenBy[other] != i) {
                    seenBy[other] = i;
                    near[count++] = other;
                }
            }
        }
        start[size] = count;
        return new Graph(size, start, Arrays.copyOf(near, count));
    }
}
