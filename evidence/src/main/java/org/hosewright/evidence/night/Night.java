package org.hosewright.evidence.night;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A test night: all its readings, the gear, and what people ruled.
 *
 * @param readings in the order taken
 * @param gear the equipment they name
 * @param rulings by reading id
 */
public record Night(List<Reading> readings, Gear gear, Map<String, Ruling> rulings) {
    public Night {
        readings = List.copyOf(readings);
        rulings = Collections.unmodifiableMap(new LinkedHashMap<>(rulings));
    }
}
