package org.hosewright.hydraulics.network;

/** The moves of a fold carried out on numbers: resistances forward onto the core, flows and heads back from it. */
final class Unfold {
    private final Incidence links;
    private final int[] moves;
    private final int[] near;
    private final int[] far;
    private final double[] firstWay;
    private final double[] secondWay;
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
        for (int i = 0; i < near.length; i++) {
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
        int joined = given;
        for (int m = 0; m < moves.length; m += 4) {
            double r1 = square[moves[m + 2]];
            if (moves[m] == Fold.IN_A_ROW) {
                square[joined++] = r1 + square[moves[m + 3]];
            } else if (moves[m] == Fold.SIDE_BY_SIDE) {
                double root = 1 / Math.sqrt(r1) + 1 / Math.sqrt(square[moves[m + 3]]);
                square[joined++] = 1 / (root * root);
            } else {
                demand[moves[m + 3]] += demand[moves[m + 1]];
            }
        }
    }

    /** Works all flows and heads from those of the core. */
    void back() {
        int joined = links.links();
        for (int i = near.length - 1; i >= 0; i--) {
            int node = moves[4 * i + 1];
            int first = moves[4 * i + 2];
            int second = moves[4 * i + 3];
            if (moves[4 * i] == Fold.DEAD_END) {
                deadEnd(i, node, first);
                continue;
            }
            double through = flow[--joined];
            if (moves[4 * i] == Fold.IN_A_ROW) {
                row(i, node, first, second, through);
            } else {
                flow[first] = through * Math.sqrt(square[joined] / square[first]);
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
        int joined = links.links();
        for (int m = moves.length - 4; m >= 0 && at >= given; m -= 4) {
            boolean joins = moves[m] != Fold.DEAD_END;
            joined -= joins ? 1 : 0;
            at = joins && joined == at ? moves[m + 2] : at;
        }
        return at;
    }
}
