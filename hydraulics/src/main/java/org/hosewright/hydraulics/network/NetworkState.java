package org.hosewright.hydraulics.network;

import org.jspecify.annotations.Nullable;

/** A solved network: heads, flows and how closely they close. */
public final class NetworkState {
    private final Network network;
    private final double[] heads;
    private final double[] flows;
    private final Residuals residuals;
    private @Nullable Tangent tangent;

    /** How closely a solve closes.
     *
     * @param mass largest misfit of a node, as a share of the largest flow [1]
     * @param energy largest misfit of a link, as a share of the largest difference of pressure [1]
     * @param steps linear solves taken
     */
    public record Residuals(double mass, double energy, int steps) {}

    NetworkState(Network network, double[] heads, double[] flows, Residuals residuals) {
        this.network = network;
        this.heads = heads;
        this.flows = flows;
        this.residuals = residuals;
    }

    /** Head of a node [Pa]. */
    public double head_Pa(String node) {
        return heads[network.nodeAt(node, "")];
    }

    /** Flow of a link, signed from its first end to its second [m3/s]. */
    public double flow_m3s(String link) {
        return flows[network.linkAt(link)];
    }

    /** How a node's head moves with every number of the network.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput the node is unknown
     */
    public Derivatives ofHead(String node) {
        return tangent().ofHead(network.nodeAt(node, ""));
    }

    /** How a link's flow moves with every number of the network.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput the link is unknown
     */
    public Derivatives ofFlow(String link) {
        return tangent().ofFlow(network.linkAt(link));
    }

    public Residuals residuals() {
        return residuals;
    }

    private Tangent tangent() {
        Tangent known = tangent;
        if (known == null) {
            known = new Tangent(network, heads, flows);
            tangent = known;
        }
        return known;
    }
}
