package org.hosewright.ledger.drill;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** The needed pump pressure at a length, level, with and without what was set aside.
 *
 * @param line the line it is about
 * @param length hose length
 * @param pump needed pump pressure from the readings in use
 * @param ifUsed by id of each reading set aside: the same had it been used as well
 */
public record NeededRow(TestedLine line, Length length, Known<Pressure> pump, Map<String, Known<Pressure>> ifUsed) {
    public NeededRow {
        ifUsed = Collections.unmodifiableMap(new LinkedHashMap<>(ifUsed));
    }
}
