package org.hosewright.ledger.kit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.hydraulics.equipment.Engine;

/** An engine as the company keeps it.
 *
 * @param engine what the water sees
 * @param pipingBasis what the loss of each discharge's piping rests on, by discharge, where stated
 */
public record EngineRecord(Engine engine, Map<String, Basis> pipingBasis) {
    public EngineRecord {
        pipingBasis = Collections.unmodifiableMap(new LinkedHashMap<>(pipingBasis));
    }
}
