package org.hosewright.hydraulics.network;

import java.util.Arrays;

/** The moves of a fold carried out on numbers: resistances forward onto the core, flows and heads back from it. */
final class Unfold {
    private final Incidence links;
    private final int[] moves;
    private final int[] near;
    private final int[] far;
    private final double[] firstWay;
    private final double[] secondWay;

    /** The share of what goes through links side by side that the first takes [1]. */
    private final double[] firstShare;

    /** The link that each move joins two into. */
    private final int[] joined;

    private final int given;
    private final Pieces pieces;
    private final boolean[] oneWay;
    final double[] square;
    final double[] flow;
    final double[] head;
    final double[] demand;

    /** Takes the moves of a fold.
     *
     * @param given count of links before the fold; joined ones are numbered from it, in order
     * @param pieces the laws of the given links
     */
    Unfold(Incidence links, Fold fold, int given, Pieces pieces, boolean[] oneWay) {
        this.links = links;
        this.given = given;
        this.pieces = pieces;
        this.oneWay = oneWay;
        moves = fold.moves();
        near = new int[moves.length / 4];
        far = new int[moves.length / 4];
        firstWay = new double[moves.length / 4];
        secondWay = new double[moves.length / 4];
        firstShare = new double[moves.length / 4];
        joined = new int[moves.length / 4];
        int count = given;
        for (int i = 0; i < near.length; i++) {
            joined[i] = moves[4 * i] == Fold.DEAD_END ? -1 : count++;
            look(i, moves[4 * i], moves[4 * i + 1], moves[4 * i + 2], moves[4 * i + 3]);
        }
        square = new double[links.links()];
        flow = new double[links.links()];
        head = new double[links.nodes()];
        demand = new double[links.nodes()];
    }

    /** Notes which way each move's links run: what {@link #back} needs again and again. */
    private void look(int i, int kind, int node, int first, int second) {
        if (kind == Fold.IN_A_ROW) {
            near[i] = links.other(first, node);
            far[i] = links.other(second, node);
            firstWay[i] = links.to(first) == node ? 1 : -1;
            secondWay[i] = links.from(second) == node ? 1 : -1;
        } else if (kind == Fold.SIDE_BY_SIDE) {
            secondWay[i] = links.from(first) == links.from(second) ? 1 : -1;
        } else {
            far[i] = second;
            firstWay[i] = links.to(first) == node ? 1 : -1;
        }
    }

    /** Works the joined links' resistances and gathers what is taken at dead ends. */
    void forward() {
        for (int i = 0; i < joined.length; i++) {
            if (joined[i] >= 0) {
                join(i);
            } else {
                demand[moves[4 * i + 3]] += demand[moves[4 * i + 1]];
            }
        }
    }

    /** Works the resistance of the link that a move joins two into. */
    void join(int i) {
        double r1 = square[moves[4 * i + 2]];
        double r2 = square[moves[4 * i + 3]];
        if (moves[4 * i] == Fold.IN_A_ROW) {
            square[joined[i]] = r1 + r2;
        } else {
            double root1 = 1 / Math.sqrt(r1);
            double root = root1 + 1 / Math.sqrt(r2);
            square[joined[i]] = 1 / (root * root);
            firstShare[i] = root1 / root;
        }
    }

    /** The moves that some links take part in, themselves or joined, in order; marks the links joined so. */
    int[] movesOf(boolean[] changed) {
        int[] found = new int[joined.length];
        int count = 0;
        for (int i = 0; i < joined.length; i++) {
            if (joined[i] >= 0 && (changed[moves[4 * i + 2]] || changed[moves[4 * i + 3]])) {
                changed[joined[i]] = true;
                found[count++] = i;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** Works all flows and heads from those of the core. */
    void back() {
        for (int i = near.length - 1; i >= 0; i--) {
            int node = moves[4 * i + 1];
            int first = moves[4 * i + 2];
            int second = moves[4 * i + 3];
            if (moves[4 * i] == Fold.DEAD_END) {
                deadEnd(i, node, first);
                continue;
            }
            double through = flow[joined[i]];
            if (moves[4 * i] == Fold.IN_A_ROW) {
                row(i, node, first, second, through);
            } else {
                flow[first] = through * firstShare[i];
                flow[second] = secondWay[i] * (through - flow[first]);
            }
        }
    }

    private void row(int i, int node, int first, int second, double through) {
        flow[first] = firstWay[i] * through;
        flow[second] = secondWay[i] * through;
        boolean held = through == 0 && oneWay[first] && !oneWay[second];
        head[node] = held ? head[far[i]] : head[near[i]] - square[first] * through * Math.abs(through);
    }

    private void deadEnd(int i, int node, int link) {
        double through = demand[node];
        flow[link] = firstWay[i] * through;
        head[node] = head[far[i]] - firstWay[i] * loss_Pa(link, flow[link]);
    }

    private double loss_Pa(int link, double through) {
        boolean bare = link >= given || pieces.isSquare(link);
        return bare ? square[link] * through * Math.abs(through) : pieces.loss_Pa(link, through);
    }

    /** A given link that a link, given or joined, is made of. */
    int given(int link) {
        int at = link;
        for (int i = joined.length - 1; i >= 0 && at >= given; i--) {
            at = joined[i] == at ? moves[4 * i + 2] : at;
        }
        return at;
    }
}
