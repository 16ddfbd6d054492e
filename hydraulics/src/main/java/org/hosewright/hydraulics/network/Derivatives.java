package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.error.InvalidInput;

/** How one answer of a solved network, a head or a flow, moves with each number that went in.
 *
 * <p>Good where the answer is smooth: not on the kink of a law, nor with a one-way piece just about to open.
 */
public final class Derivatives {
    private final Network network;
    private final double[] flows;
    private final double[] byLoss;
    private final double[] byNode;

    Derivatives(Network network, double[] flows, double[] byLoss, double[] byNode) {
        this.network = network;
        this.flows = flows;
        this.byLoss = byLoss;
        this.byNode = byNode;
    }

    /** By a number of a link's law, numbered as {@link org.hosewright.hydraulics.network.law.Law#listCoefficients}. */
    public double byCoefficient(String link, int at) {
        int k = network.linkAt(link);
        return byLoss[k] * network.law(k).lossByCoefficient(at, flows[k]);
    }

    /** By a loss added to a link [answer per Pa]. */
    public double byLoss(String link) {
        return byLoss[network.linkAt(link)];
    }

    /** By the head of a fixed node [answer per Pa]. */
    public double byFixedHead(String node) {
        return byNode[require(node, true, "a node of fixed head")];
    }

    /** By the demand at a free node [answer per m3/s]. */
    public double byDemand(String node) {
        return byNode[require(node, false, "a node whose head is found")];
    }

    private int require(String node, boolean fixed, String allowed) {
        int at = network.nodeAt(node, "derivative");
        if (network.isFixed(at) != fixed) {
            throw new InvalidInput("node of a derivative", node, allowed, "network");
        }
        return at;
    }
}
