package org.hosewright.hydraulics.working;

import java.util.List;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The hand calculation of the reaction at a nozzle, in the exact form. */
public final class ReactionWorking {
    private ReactionWorking() {}

    public static Working of(Line line, LineState state, UnitSystem units) {
        return new Working("Reaction", List.of(new TipText(new Paper(units), line).reaction(state)));
    }
}
