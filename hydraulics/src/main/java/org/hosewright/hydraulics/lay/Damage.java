package org.hosewright.hydraulics.lay;

import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;

/** What is wrong with a chain of hose. */
public sealed interface Damage {

    /** A coupling that has let go: water leaves there as from an open hose end.
     *
     * @param coupling counted from the start of the chain; 1 is the far end of its first section
     */
    record Burst(int coupling) implements Damage {
        public Burst {
            Numbers.requirePositive("coupling of a burst", coupling);
        }
    }

    /** A kink somewhere in the chain. */
    record Kink(PointLoss loss) implements Damage {}
}
