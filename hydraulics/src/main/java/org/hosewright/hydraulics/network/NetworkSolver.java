package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.error.NotConverged;

/** Finds the heads and flows of a network by a Newton method on heads and flows together.
 *
 * <p>The flows are those of least content under mass balance: for laws that never fall there is one answer, and where
 * full steps do not reach it, a search downhill along the content does.
 *
 * @source E. Todini and S. Pilati, A gradient algorithm for the analysis of pipe networks, 1988
 */
public final class NetworkSolver {
    /** Largest misfit of mass, as a share of the largest flow [1]. */
    public static final double MASS = 1e-12;

    /** Largest misfit of energy, as a share of the largest difference of pressure [1]. */
    public static final double ENERGY = 1e-10;

    private static final int FULL_STEPS = 25;
    private static final int SURE_STEPS = 80;

    /** Prices of backward flow, as shares of pressure over flow [1]. */
    private static final double PRICE = 1e2;

    private static final double DEARER = 1e3;
    private static final double DEAREST = 1e11;

    private NetworkSolver() {}

    /** Solves a network.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput a node hangs on no fixed head, or no water can come to a
     *     demand; the node is named
     * @throws NotConverged no answer within the steps; the worst link is named
     */
    public static NetworkState solve(Network network) {
        Reachable.require(network);
        Folded folded = new Folded(network, new boolean[network.nodes()]);
        folded.load();
        Iterate at = folded.core();
        Newton newton = new Newton(at);
        int steps = solve(at, newton);
        if (!newton.isSettled()) {
            String worst = network.linkName(folded.linkOf(newton.worst()));
            throw new NotConverged("The network found no balance of flows.", worst);
        }
        folded.finish();
        return folded.state(network, new NetworkState.Residuals(at.massMisfit(), newton.misfit(), steps));
    }

    /** Solves a core from its own numbers alone; gives the linear solves taken. */
    static int solve(Iterate at, Newton newton) {
        int steps = newton.start() + newton.run(FULL_STEPS);
        steps += newton.isSettled() ? 0 : surely(at, newton);
        newton.shut();
        return steps;
    }

    /** Goes downhill at ever dearer backward flow until full steps settle it; gives the linear solves taken. */
    private static int surely(Iterate at, Newton newton) {
        Descent descent = new Descent(at);
        int steps = 0;
        for (double price = PRICE; !newton.isSettled() && price <= DEAREST; price *= DEARER) {
            steps += descent.run(price, SURE_STEPS) + newton.resume(FULL_STEPS);
        }
        return steps;
    }
}
