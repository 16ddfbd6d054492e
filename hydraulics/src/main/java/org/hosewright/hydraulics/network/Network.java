package org.hosewright.hydraulics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.quantity.Numbers;

/** Named nodes joined by named links with a law each; heads are total pressures, p + w z [Pa].
 *
 * <p>A tank, a held pump pressure, a hydrant's static pressure and the air at a tip are nodes of fixed head; a tip is a
 * one-way link into its air.
 */
public final class Network {
    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    private final Map<String, Integer> links = new LinkedHashMap<>();
    private final List<String> nodeNames = new ArrayList<>();
    private final List<String> linkNames = new ArrayList<>();
    private final List<Law> laws = new ArrayList<>();
    private double[] heads_Pa = new double[8];
    private double[] demands_m3s = new double[8];
    private int[] from = new int[8];
    private int[] to = new int[8];

    /** Makes an empty network. */
    public Network() {}

    /** Adds a node whose head is to be found. */
    public Network free(String name) {
        return node(name, Double.NaN);
    }

    /** Adds a node with a fixed head [Pa]: a tank, a held pump pressure, the air at a tip. */
    public Network fixed(String name, double head_Pa) {
        return node(name, Numbers.requireFinite("head of " + name, head_Pa));
    }

    /** Takes a fixed flow out of a free node, beside what was taken before; a negative flow is put in [m3/s]. */
    public Network demand(String node, double flow_m3s) {
        int at = nodeAt(node, "demand");
        if (isFixed(at)) {
            throw new InvalidInput("node of a demand", node, "a node whose head is to be found", "network");
        }
        demands_m3s[at] += Numbers.requireFinite("demand at " + node, flow_m3s);
        return this;
    }

    /** Adds a link; flow counts from {@code from} to {@code to}. */
    public Network link(String name, String from, String to, Law law) {
        if (from.equals(to)) {
            throw new InvalidInput("far end of a link", to, "another node than its near end", name);
        }
        int count = laws.size();
        this.from = room(this.from, count);
        this.to = room(this.to, count);
        this.from[count] = nodeAt(from, name);
        this.to[count] = nodeAt(to, name);
        if (links.putIfAbsent(name, count) != null) {
            throw new InvalidInput("name of a link", name, "a name not yet given", "network");
        }
        linkNames.add(name);
        laws.add(law);
        return this;
    }

    /** The same network with another head at a fixed node. */
    public Network withHead(String node, double head_Pa) {
        int at = nodeAt(node, "head");
        if (!isFixed(at)) {
            throw new InvalidInput("node of a head", node, "a node of fixed head", "network");
        }
        Network changed = copy();
        changed.heads_Pa[at] = Numbers.requireFinite("head of " + node, head_Pa);
        return changed;
    }

    /** The same network with another law at a link. */
    public Network withLaw(String link, Law law) {
        Network changed = copy();
        changed.laws.set(linkAt(link), law);
        return changed;
    }

    public List<String> listNodes() {
        return List.copyOf(nodeNames);
    }

    public List<String> listLinks() {
        return List.copyOf(linkNames);
    }

    /** The law of a link. */
    public Law law(String link) {
        return laws.get(linkAt(link));
    }

    /** The name of the node that a link's flow counts from. */
    public String from(String link) {
        return nodeNames.get(from[linkAt(link)]);
    }

    /** The name of the node that a link's flow counts to. */
    public String to(String link) {
        return nodeNames.get(to[linkAt(link)]);
    }

    int nodeAt(String name, String where) {
        Integer at = nodes.get(name);
        if (at == null) {
            throw new InvalidInput("node", name, "a node of the network", where);
        }
        return at;
    }

    int linkAt(String name) {
        Integer at = links.get(name);
        if (at == null) {
            throw new InvalidInput("link", name, "a link of the network", "");
        }
        return at;
    }

    int nodes() {
        return nodeNames.size();
    }

    int links() {
        return laws.size();
    }

    String nodeName(int node) {
        return nodeNames.get(node);
    }

    String linkName(int link) {
        return linkNames.get(link);
    }

    boolean isFixed(int node) {
        return !Double.isNaN(heads_Pa[node]);
    }

    /** Head of a fixed node [Pa]; not a number for a free one. */
    double head_Pa(int node) {
        return heads_Pa[node];
    }

    double demand_m3s(int node) {
        return demands_m3s[node];
    }

    int from(int link) {
        return from[link];
    }

    int to(int link) {
        return to[link];
    }

    Law law(int link) {
        return laws.get(link);
    }

    private Network copy() {
        Network copy = new Network();
        copy.nodes.putAll(nodes);
        copy.links.putAll(links);
        copy.nodeNames.addAll(nodeNames);
        copy.linkNames.addAll(linkNames);
        copy.laws.addAll(laws);
        copy.heads_Pa = heads_Pa.clone();
        copy.demands_m3s = demands_m3s.clone();
        copy.from = from.clone();
        copy.to = to.clone();
        return copy;
    }

    private Network node(String name, double head_Pa) {
        int count = nodeNames.size();
        if (nodes.putIfAbsent(name, count) != null) {
            throw new InvalidInput("name of a node", name, "a name not yet given", "network");
        }
        heads_Pa = room(heads_Pa, count);
        demands_m3s = room(demands_m3s, count);
        heads_Pa[count] = head_Pa;
        nodeNames.add(name);
        return this;
    }

    private static double[] room(double[] array, int count) {
        return count < array.length ? array : java.util.Arrays.copyOf(array, 2 * count);
    }

    private static int[] room(int[] array, int count) {
        return count < array.length ? array : java.util.Arrays.copyOf(array, 2 * count);
    }
}
