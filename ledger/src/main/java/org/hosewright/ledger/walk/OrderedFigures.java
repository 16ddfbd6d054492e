package org.hosewright.ledger.walk;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** What is ordered for a package, by the length of its hose: figures on its panel gauge. */
@FunctionalInterface
public interface OrderedFigures {
    /** Nothing is ordered. */
    OrderedFigures NONE = hose -> Optional.empty();

    /** The figure ordered at a length of hose, where there is one. */
    Optional<Pressure> find(Length hose);
}
