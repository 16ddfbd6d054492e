package org.hosewright.hydraulics.network;

import java.util.List;
import java.util.OptionalDouble;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.error.NotConverged;

/** Asks a network backwards: numbers left open become unknowns beside the heads, and what is wanted their equations.
 *
 * <p>Each full step solves the heads with the same factor once more for every number left open, then a small dense
 * system for the numbers themselves: a bordered system.
 */
public final class Asking {
    private static final int STEPS = 60;

    /** How close a wanted answer is met, as a share of the scale of its kind [1]. */
    private static final double MET = 1e-11;

    private Asking() {}

    /** Finds as many numbers as answers are wanted; the network's own values are where the search sets out.
     *
     * @throws InvalidInput the counts differ, a name is unknown, a node is not of the kind it is used as
     * @throws NotConverged no such numbers were found; the first answer wanted is named
     */
    public static Found find(Network network, List<Freed> freed, List<Wanted> wanted) {
        if (freed.size() != wanted.size() || freed.isEmpty()) {
            throw new InvalidInput(
                    "numbers left open", String.valueOf(freed.size()), "as many as answers wanted", "network");
        }
        Reachable.require(network);
        Compiled compiled = new Compiled(network);
        Iterate at = compiled.iterate();
        Newton newton = new Newton(at);
        newton.start();
        newton.run(STEPS);
        Border border = new Border(compiled, freed, wanted);
        for (int step = 0; step < STEPS; step++) {
            newton.stepWith(border);
            if (newton.misfit() <= NetworkSolver.ENERGY && border.misfit() <= MET) {
                return solved(network, freed, border.listValues());
            }
        }
        OptionalDouble value =
                freed.size() == 1 ? new Bracketed(network, freed.get(0), wanted.get(0)).find() : OptionalDouble.empty();
        return solved(network, freed, List.of(value.orElseThrow(() -> missed(wanted))));
    }

    private static NotConverged missed(List<Wanted> wanted) {
        return new NotConverged(
                "No numbers left open give what is wanted.", wanted.get(0).at());
    }

    private static Found solved(Network network, List<Freed> freed, List<Double> values) {
        Network changed = network;
        for (int i = 0; i < freed.size(); i++) {
            changed = Bracketed.network(changed, freed.get(i), values.get(i));
        }
        return new Found(values, changed, NetworkSolver.solve(changed));
    }
}
