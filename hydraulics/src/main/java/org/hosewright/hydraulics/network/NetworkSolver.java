package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.error.NotConverged;

/** Finds the heads and flows of a network by a Newton method on heads and flows together.
 *
 * <p>Flows minimise a convex content under mass balance; each step is searched along its derivative.
 */
public final class NetworkSolver {
    /** Largest misfit of mass, as a share of the largest flow [1]. */
    public static final double MASS = 1e-12;

    /** Largest misfit of energy, as a share of the largest head difference [1]. */
    public static final double ENERGY = 1e-10;

    private static final int STEPS = 300;

    /** Makes a solver; it keeps nothing between solves. */
    public NetworkSolver() {}

    /** Solves a network.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput a node is joined to no fixed head
     * @throws NotConverged no answer within the steps; the worst link is named
     */
    public NetworkState solve(Network network) {
        Connected.require(network);
        NewtonStep step = new NewtonStep(network);
        for (int count = 1; count <= STEPS; count++) {
            step.take(count == 1);
            double mass = step.massMisfit();
            double energy = step.energyMisfit();
            if (mass <= MASS && energy <= ENERGY) {
                return step.state(new NetworkState.Residuals(mass, energy, count));
            }
        }
        throw new NotConverged(
                "The network found no balance of flows.", network.listLinks().get(step.worstLink()));
    }
}
