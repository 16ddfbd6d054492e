package org.hosewright.hydraulics.network.sparse;

import java.util.Arrays;

/** Numbers kept by degree, the least to be had at once. */
final class Buckets {
    private static final int NONE = -1;

    private final int[] first;
    private final int[] next;
    private final int[] before;
    private final int[] degree;
    private int least;

    Buckets(int size) {
        first = new int[size + 1];
        next = new int[size];
        before = new int[size];
        degree = new int[size];
        Arrays.fill(first, NONE);
        least = size;
    }

    void put(int i, int at) {
        degree[i] = at;
        before[i] = NONE;
        next[i] = first[at];
        if (first[at] != NONE) {
            before[first[at]] = i;
        }
        first[at] = i;
        least = Math.min(least, at);
    }

    void move(int i, int to) {
        remove(i);
        put(i, to);
    }

    int degree(int i) {
        return degree[i];
    }

    /** Takes one of least degree out. */
    int takeLeast() {
        while (first[least] == NONE) {
            least++;
        }
        int found = first[least];
        remove(found);
        return found;
    }

    private void remove(int i) {
        if (before[i] == NONE) {
            first[degree[i]] = next[i];
        } else {
            next[before[i]] = next[i];
        }
        if (next[i] != NONE) {
            before[next[i]] = before[i];
        }
    }
}
