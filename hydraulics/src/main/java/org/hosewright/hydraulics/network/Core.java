package org.hosewright.hydraulics.network;

import java.util.Arrays;

/** What is left of a network once it is folded: its free and fixed nodes and its links, numbered anew. */
final class Core {
    private final int[] nodes;
    private final int[] links;
    private final boolean[] oneWay;
    private final int given;
    private final Iterate at;

    Core(Incidence all, boolean[] fixed, int[] hub, Pieces laws, boolean[] oneWay) {
        this.oneWay = oneWay;
        given = laws.links();
        links = living(all);
        nodes = living(all, fixed, hub);
        int[] number = new int[all.nodes()];
        boolean[] held = new boolean[nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            number[nodes[i]] = i;
            held[i] = fixed[nodes[i]];
        }
        int[] from = new int[links.length];
        int[] to = new int[links.length];
        Pieces pieces = new Pieces(links.length);
        for (int k = 0; k < links.length; k++) {
            from[k] = number[all.from(links[k])];
            to[k] = number[all.to(links[k])];
            if (links[k] < given) {
                pieces.take(k, laws, links[k]);
            }
        }
        at = new Iterate(new Shape(held, from, to), pieces);
    }

    Iterate iterate() {
        return at;
    }

    /** The number that a link of the core has among all links, given and joined. */
    int link(int coreLink) {
        return links[coreLink];
    }

    void load(Unfold from) {
        for (int k = 0; k < links.length; k++) {
            boolean joined = links[k] >= given;
            if (joined || at.pieces.isSquare(k)) {
                at.pieces.setSquare(k, from.square[links[k]], oneWay[links[k]]);
            }
        }
        for (int i = 0; i < nodes.length; i++) {
            int place = at.shape.placeOf(i);
            at.head[place] = from.head[nodes[i]];
            at.demand[place] = from.demand[nodes[i]];
        }
    }

    /** Takes over the resistances of some of its links. */
    void load(Unfold from, int[] changed) {
        for (int k : changed) {
            at.pieces.setSquare(k, from.square[links[k]], oneWay[links[k]]);
        }
    }

    /** The links of the core that are among some of all links. */
    int[] among(boolean[] changed) {
        int[] found = new int[links.length];
        int count = 0;
        for (int k = 0; k < links.length; k++) {
            if (changed[links[k]]) {
                found[count++] = k;
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The place of a node, which must be of the core. */
    int placeOf(int node) {
        return at.shape.placeOf(Arrays.binarySearch(nodes, node));
    }

    void finish(Unfold to) {
        for (int k = 0; k < links.length; k++) {
            to.flow[links[k]] = at.flow[k];
        }
        for (int i = 0; i < nodes.length; i++) {
            to.head[nodes[i]] = at.head[at.shape.placeOf(i)];
        }
    }

    private static int[] living(Incidence all) {
        int[] living = new int[all.links()];
        int count = 0;
        for (int k = 0; k < living.length; k++) {
            if (all.isAlive(k)) {
                living[count++] = k;
            }
        }
        return Arrays.copyOf(living, count);
    }

    private static int[] living(Incidence all, boolean[] fixed, int[] hub) {
        int[] living = new int[all.nodes()];
        int count = 0;
        for (int i = 0; i < living.length; i++) {
            if (hub[i] == i && (fixed[i] || all.degree(i) > 0)) {
                living[count++] = i;
            }
        }
        return Arrays.copyOf(living, count);
    }
}
