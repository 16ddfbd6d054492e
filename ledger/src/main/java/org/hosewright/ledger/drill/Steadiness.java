package org.hosewright.ledger.drill;

import java.util.List;

/** How a night's numbers stand when each reading that they rest on is left out in turn.
 *
 * @param leftOut what would be told without each reading, in the night's order
 * @param swings how far each number moves
 */
public record Steadiness(List<LeftOut> leftOut, List<Swing> swings) {
    public static final Steadiness NONE = new Steadiness(List.of(), List.of());

    public Steadiness {
        leftOut = List.copyOf(leftOut);
        swings = List.copyOf(swings);
    }
}
