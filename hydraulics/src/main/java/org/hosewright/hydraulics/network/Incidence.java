package org.hosewright.hydraulics.network;

import java.util.Arrays;

/** Which links touch which nodes while a network is folded: links die, new ones take their place. */
final class Incidence {
    private static final int NONE = -1;

    private int links;
    private int[] from;
    private int[] to;
    private boolean[] alive;
    private int[] next;
    private final int[] first;
    private final int[] degree;

    Incidence(int nodes, int room) {
        first = new int[nodes];
        degree = new int[nodes];
        Arrays.fill(first, NONE);
        from = new int[room];
        to = new int[room];
        alive = new boolean[room];
        next = new int[2 * room];
    }

    /** Adds a link; gives its number. */
    int add(int one, int other) {
        if (links == from.length) {
            grow();
        }
        int link = links++;
        from[link] = one;
        to[link] = other;
        alive[link] = true;
        next[2 * link] = first[one];
        first[one] = 2 * link;
        next[2 * link + 1] = first[other];
        first[other] = 2 * link + 1;
        degree[one]++;
        degree[other]++;
        return link;
    }

    void remove(int link) {
        alive[link] = false;
        degree[from[link]]--;
        degree[to[link]]--;
    }

    /** The n-th living link at a node, or -1. */
    int linkAt(int node, int n) {
        int count = 0;
        int before = NONE;
        for (int half = first[node]; half != NONE; half = next[half]) {
            if (!alive[half / 2]) {
                skip(node, before, half);
            } else if (count++ == n) {
                return half / 2;
            } else {
                before = half;
            }
        }
        return NONE;
    }

    /** Lists the living links at a node that are of one sort, at most as many as there is room for; gives their count. */
    int listLiving(int node, int[] room, boolean[] sort) {
        int count = 0;
        for (int half = first[node]; half != NONE && count < room.length; half = next[half]) {
            int link = half / 2;
            if (alive[link] && sort[link]) {
                room[count++] = link;
            }
        }
        return count;
    }

    int degree(int node) {
        return degree[node];
    }

    int nodes() {
        return first.length;
    }

    int links() {
        return links;
    }

    boolean isAlive(int link) {
        return alive[link];
    }

    int from(int link) {
        return from[link];
    }

    int to(int link) {
        return to[link];
    }

    int other(int link, int node) {
        return from[link] == node ? to[link] : from[link];
    }

    private void skip(int node, int before, int half) {
        if (before == NONE) {
            first[node] = next[half];
        } else {
            next[before] = next[half];
        }
    }

    private void grow() {
        from = Arrays.copyOf(from, 2 * links + 4);
        to = Arrays.copyOf(to, 2 * links + 4);
        alive = Arrays.copyOf(alive, 2 * links + 4);
        next = Arrays.copyOf(next, 4 * links + 8);
    }
}
