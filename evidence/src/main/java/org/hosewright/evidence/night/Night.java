package org.hosewright.evidence.night;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** A test night: all its readings, the gear, and what people ruled.
 *
 * @param readings in the order taken
 * @param gear the equipment they name
 * @param rulings by reading id
 * @param units the units that sentences about it are said in
 */
public record Night(List<Reading> readings, Gear gear, Map<String, Ruling> rulings, UnitSystem units) {
    public Night {
        readings = List.copyOf(readings);
        rulings = Collections.unmodifiableMap(new LinkedHashMap<>(rulings));
    }

    /** A night of a company that speaks in psi and feet. */
    public Night(List<Reading> readings, Gear gear, Map<String, Ruling> rulings) {
        this(readings, gear, rulings, UnitSystem.US);
    }
}
