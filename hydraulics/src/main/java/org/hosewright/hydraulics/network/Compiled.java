package org.hosewright.hydraulics.network;

/** A network laid out for solving: its shape, its laws, its heads and demands by place. */
final class Compiled {
    private final Network network;
    private final Iterate at;
    private final double datum_Pa;

    Compiled(Network network) {
        this.network = network;
        datum_Pa = datum_Pa(network);
        at = new Iterate(shape(network), pieces(network));
        for (int i = 0; i < network.nodes(); i++) {
            int place = at.shape.placeOf(i);
            at.head[place] = network.isFixed(i) ? network.head_Pa(i) - datum_Pa : 0;
            at.demand[place] = network.demand_m3s(i);
        }
    }

    Network network() {
        return network;
    }

    /** The head that the iterate's heads are held against [Pa]. */
    double datum_Pa() {
        return datum_Pa;
    }

    Iterate iterate() {
        return at;
    }

    static Shape shape(Network network) {
        boolean[] fixed = new boolean[network.nodes()];
        int[] from = new int[network.links()];
        int[] to = new int[network.links()];
        for (int i = 0; i < fixed.length; i++) {
            fixed[i] = network.isFixed(i);
        }
        for (int k = 0; k < from.length; k++) {
            from[k] = network.from(k);
            to[k] = network.to(k);
        }
        return new Shape(fixed, from, to);
    }

    static Pieces pieces(Network network) {
        Pieces pieces = new Pieces(network.links());
        for (int k = 0; k < network.links(); k++) {
            pieces.set(k, network.law(k));
        }
        return pieces;
    }

    /** The middle of the fixed heads [Pa]: heads are held against it, for rounding grows with their size. */
    static double datum_Pa(Network network) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < network.nodes(); i++) {
            low = network.isFixed(i) ? Math.min(low, network.head_Pa(i)) : low;
            high = network.isFixed(i) ? Math.max(high, network.head_Pa(i)) : high;
        }
        return low / 2 + high / 2;
    }
}
