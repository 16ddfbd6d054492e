package org.hosewright.hydraulics.network;

import java.util.Arrays;

/** How a network folds: dead ends onto what they hang from, square pieces in a row and side by side into one.
 *
 * <p>Hose after hose has r = r1 + r2; hose beside hose between the same two heads has 1/sqrt(r) = 1/sqrt(r1) +
 * 1/sqrt(r2). A dead end passes what is taken at it, whatever its law. What cannot be folded is the core; where it has
 * no free node left, the answer is in closed form.
 *
 * @source parallel and serial lines, common practice; A. Simpson, S. Elhay, B. Alexander, Forest-core partitioning
 *     algorithm for speeding up analysis of water distribution systems, 2014
 */
final class Fold {
    static final int IN_A_ROW = 0;
    static final int SIDE_BY_SIDE = 1;
    static final int DEAD_END = 2;

    /** A node with more links than this is not searched for links side by side. */
    private static final int MANY = 8;

    private final Incidence links;
    private final boolean[] fixed;
    private final boolean[] taken;
    private final boolean[] square;
    private final boolean[] oneWay;
    private final int[] beside = new int[MANY];
    private final int[] waiting;
    private final boolean[] waits;
    private int head;
    private int count;
    private int[] moves = new int[16];
    private int size;

    /** Folds a network.
     *
     * @param links its links, between nodes of which those of one fixed head are one
     * @param fixed the nodes of fixed head
     * @param taken the nodes that water is taken from; changed
     * @param square the links with a square law; with room for as many again
     * @param oneWay the one-way links; with room for as many again
     */
    Fold(Incidence links, boolean[] fixed, boolean[] taken, boolean[] square, boolean[] oneWay) {
        this.links = links;
        this.fixed = fixed;
        this.taken = taken;
        this.square = square;
        this.oneWay = oneWay;
        waiting = new int[fixed.length];
        waits = new boolean[fixed.length];
        for (int i = 0; i < fixed.length; i++) {
            await(i);
        }
        while (count > 0) {
            int node = waiting[head];
            head = head + 1 == waiting.length ? 0 : head + 1;
            count--;
            waits[node] = false;
            fold(node);
        }
        moves = Arrays.copyOf(moves, size);
    }

    /** The moves in order, four numbers each: the kind, the node, then the two links that one took the place of, or the
     * link of a dead end and the node it hangs from.
     */
    int[] moves() {
        return moves;
    }

    private void fold(int node) {
        if (links.degree(node) <= MANY) {
            joinBeside(node);
        }
        if (links.degree(node) == 1) {
            int only = links.linkAt(node, 0);
            if (!oneWay[only] || !taken[node]) {
                int other = links.other(only, node);
                links.remove(only);
                taken[other] |= taken[node];
                record(DEAD_END, node, only, other);
                await(other);
            }
        } else if (links.degree(node) == 2 && !taken[node]) {
            joinRow(node, links.linkAt(node, 0), links.linkAt(node, 1));
        }
    }

    private void joinRow(int node, int one, int other) {
        int near = links.other(one, node);
        int far = links.other(other, node);
        boolean against = oneWay[one] && oneWay[other] && (links.to(one) == node) == (links.to(other) == node);
        if (near == far || against || !square[one] || !square[other]) {
            return;
        }
        boolean swap = (oneWay[one] && links.from(one) == node) || (oneWay[other] && links.to(other) == node);
        join(IN_A_ROW, node, swap ? other : one, swap ? one : other);
    }

    private void joinBeside(int node) {
        int count = links.listLiving(node, beside, square);
        for (int i = 0; i < count; i++) {
            int one = beside[i];
            for (int j = i + 1; j < count; j++) {
                int other = beside[j];
                boolean alike = oneWay[one] ? oneWay[other] && links.from(one) == links.from(other) : !oneWay[other];
                if (alike && links.other(one, node) == links.other(other, node)) {
                    join(SIDE_BY_SIDE, node, one, other);
                    joinBeside(node);
                    return;
                }
            }
        }
    }

    /** Puts one link in the place of two; in a row, it runs from the far end of the first to that of the second. */
    private void join(int kind, int node, int first, int second) {
        int from = kind == IN_A_ROW ? links.other(first, node) : links.from(first);
        int to = kind == IN_A_ROW ? links.other(second, node) : links.to(first);
        links.remove(first);
        links.remove(second);
        int joined = links.add(from, to);
        square[joined] = true;
        oneWay[joined] = oneWay[first] || oneWay[second];
        record(kind, node, first, second);
        await(from);
        await(to);
    }

    private void record(int kind, int node, int first, int second) {
        moves = size + 4 > moves.length ? Arrays.copyOf(moves, 2 * moves.length) : moves;
        moves[size++] = kind;
        moves[size++] = node;
        moves[size++] = first;
        moves[size++] = second;
    }

    private void await(int node) {
        if (!fixed[node] && !waits[node]) {
            waits[node] = true;
            int at = head + count++;
            waiting[at < waiting.length ? at : at - waiting.length] = node;
        }
    }
}
