package org.hosewright.hydraulics.network;

import java.util.LinkedHashMap;
import java.util.Map;

/** A network laid out for solving with all that folds folded away; the iterate holds the core alone.
 *
 * <p>Nodes of one fixed head count as one node, but for those that are to be changed.
 */
final class Folded {
    private final int[] hub;
    private final Unfold unfold;
    private final Core core;
    private final double[] demands;
    private final double datum_Pa;
    private int[] movesAgain = {};
    private int[] linksAgain = {};

    /** Folds a network.
     *
     * @param apart fixed nodes that are not to be taken as one with others of the same head
     */
    Folded(Network network, boolean[] apart) {
        int given = network.links();
        datum_Pa = Compiled.datum_Pa(network);
        hub = hubs(network, apart);
        Pieces pieces = Compiled.pieces(network);
        Incidence links = new Incidence(network.nodes(), 2 * given);
        boolean[] square = new boolean[2 * given];
        boolean[] oneWay = new boolean[2 * given];
        for (int k = 0; k < given; k++) {
            square[k] = pieces.isSquare(k);
            oneWay[k] = pieces.isOneWay(k);
            links.add(hub[network.from(k)], hub[network.to(k)]);
        }
        demands = demands(network);
        boolean[] fixed = fixed(network);
        Fold fold = new Fold(links, fixed, taken(demands), square, oneWay);
        unfold = new Unfold(links, fold, given, pieces, oneWay);
        core = new Core(links, fixed, hub, pieces, oneWay);
        for (int i = 0; i < fixed.length; i++) {
            unfold.head[i] = fixed[i] ? network.head_Pa(i) - datum_Pa : 0;
        }
        for (int k = 0; k < given; k++) {
            unfold.square[k] = pieces.square(k);
        }
    }

    Iterate core() {
        return core.iterate();
    }

    /** Resistances of square links, to be changed before {@link #load}. */
    void setSquare(int link, double r) {
        unfold.square[link] = r;
    }

    /** Heads of fixed nodes that stand apart. */
    void setHead(int node, double head_Pa) {
        unfold.head[node] = head_Pa - datum_Pa;
        core.iterate().head[core.placeOf(node)] = head_Pa - datum_Pa;
    }

    /** Puts the numbers into the core. */
    void load() {
        System.arraycopy(demands, 0, unfold.demand, 0, demands.length);
        unfold.forward();
        core.load(unfold);
    }

    /** Says which square links are to change again and again, for {@link #reload}. */
    void vary(int[] links) {
        boolean[] changed = new boolean[unfold.square.length];
        for (int link : links) {
            changed[link] = true;
        }
        movesAgain = unfold.movesOf(changed);
        linksAgain = core.among(changed);
    }

    /** The links of the core that change again and again. */
    int[] varied() {
        return linksAgain;
    }

    /** Puts into the core what hangs on the links that vary. */
    void reload() {
        for (int move : movesAgain) {
            unfold.join(move);
        }
        core.load(unfold, linksAgain);
    }

    /** Takes the core's answer out to every node and link. */
    void finish() {
        core.finish(unfold);
        unfold.back();
    }

    double flow_m3s(int link) {
        return unfold.flow[link];
    }

    double head_Pa(int node) {
        return datum_Pa + unfold.head[hub[node]];
    }

    /** A link of the network that is part of a link of the core. */
    int linkOf(int coreLink) {
        return unfold.given(core.link(coreLink));
    }

    NetworkState state(Network network, NetworkState.Residuals residuals) {
        double[] heads = new double[network.nodes()];
        double[] flows = new double[network.links()];
        for (int i = 0; i < heads.length; i++) {
            heads[i] = network.isFixed(i) ? network.head_Pa(i) : head_Pa(i);
        }
        System.arraycopy(unfold.flow, 0, flows, 0, flows.length);
        return new NetworkState(network, heads, flows, residuals);
    }

    private static int[] hubs(Network network, boolean[] apart) {
        int[] hub = new int[network.nodes()];
        Map<Double, Integer> byHead = new LinkedHashMap<>();
        for (int i = 0; i < hub.length; i++) {
            hub[i] = i;
            if (network.isFixed(i) && !apart[i]) {
                Integer known = byHead.putIfAbsent(network.head_Pa(i), i);
                hub[i] = known == null ? i : known;
            }
        }
        return hub;
    }

    private static boolean[] fixed(Network network) {
        boolean[] fixed = new boolean[network.nodes()];
        for (int i = 0; i < fixed.length; i++) {
            fixed[i] = network.isFixed(i);
        }
        return fixed;
    }

    private static double[] demands(Network network) {
        double[] demands = new double[network.nodes()];
        for (int i = 0; i < demands.length; i++) {
            demands[i] = network.demand_m3s(i);
        }
        return demands;
    }

    private static boolean[] taken(double[] demands) {
        boolean[] taken = new boolean[demands.length];
        for (int i = 0; i < taken.length; i++) {
            taken[i] = demands[i] != 0;
        }
        return taken;
    }
}
