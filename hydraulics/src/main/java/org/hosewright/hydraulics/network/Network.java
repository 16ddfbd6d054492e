package org.hosewright.hydraulics.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.network.law.Law;
import org.hosewright.hydraulics.quantity.Numbers;

/** Named nodes joined by named links with a law each; heads are total pressures, p + w z [Pa]. */
public final class Network {
    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    private final Map<String, Integer> links = new LinkedHashMap<>();
    private final List<Double> heads_Pa = new ArrayList<>();
    private final List<Integer> from = new ArrayList<>();
    private final List<Integer> to = new ArrayList<>();
    private final List<Law> laws = new ArrayList<>();

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

    /** Adds a link; flow counts from {@code from} to {@code to}. */
    public Network link(String name, String from, String to, Law law) {
        if (from.equals(to)) {
            throw new InvalidInput("far end of a link", to, "another node than its near end", name);
        }
        this.from.add(nodeAt(from, name));
        this.to.add(nodeAt(to, name));
        if (links.putIfAbsent(name, laws.size()) != null) {
            throw new InvalidInput("name of a link", name, "a name not yet given", "");
        }
        laws.add(law);
        return this;
    }

    public List<String> listNodes() {
        return List.copyOf(nodes.keySet());
    }

    public List<String> listLinks() {
        return List.copyOf(links.keySet());
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

    double head_Pa(int node) {
        return heads_Pa.get(node);
    }

    int from(int link) {
        return from.get(link);
    }

    int to(int link) {
        return to.get(link);
    }

    Law law(int link) {
        return laws.get(link);
    }

    private Network node(String name, double head_Pa) {
        if (nodes.putIfAbsent(name, heads_Pa.size()) != null) {
            throw new InvalidInput("name of a node", name, "a name not yet given", "");
        }
        heads_Pa.add(head_Pa);
        return this;
    }
}
