package org.hosewright.hydraulics.network;

/** The moves of a fold carried out on numbers: resistances forward onto the core, flows and heads back from it. */
final class Unfold {
    private final Incidence links;
    private final int[] moves;
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
        square = new double[links.links()];
        flow = new double[links.links()];
        head = new double[links.nodes()];
        demand = new double[links.nodes()];
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
        for (int m = moves.length - 4; m >= 0; m -= 4) {
            int node = moves[m + 1];
            int first = moves[m + 2];
            int second = moves[m + 3];
            if (moves[m] == Fold.DEAD_END) {
                deadEnd(node, first, second);
                continue;
            }
            double through = flow[--joined];
            if (moves[m] == Fold.IN_A_ROW) {
                row(node, first, second, through);
            } else {
                flow[first] = through * Math.sqrt(square[joined] / square[first]);
                double rest = through - flow[first];
                flow[second] = links.from(first) == links.from(second) ? rest : -rest;
            }
        }
    }

    private void row(int node, int first, int second, double through) {
        int near = links.other(first, node);
        int far = links.other(second, node);
        flow[first] = links.to(first) == node ? through : -through;
        flow[second] = links.from(second) == node ? through : -through;
        boolean held = through == 0 && oneWay[first] && !oneWay[second];
        head[node] = held ? head[far] : head[near] - square[first] * through * Math.abs(through);
    }

    private void deadEnd(int node, int link, int other) {
        double through = demand[node];
        boolean inward = links.to(link) == node;
        flow[link] = inward ? through : -through;
        double loss = loss_Pa(link, flow[link]);
        head[node] = head[other] - (inward ? loss : -loss);
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
