package org.hosewright.ledger.kit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Engine;

/** An engine as the company keeps it.
 *
 * @param engine what the water sees
 * @param pipingBasis what the loss of each discharge's piping rests on, by discharge, where stated
 * @param gauge id of the gauge on its panel that pump pressures are read on, where named
 */
public record EngineRecord(Engine engine, Map<String, Basis> pipingBasis, Optional<String> gauge) {
    public EngineRecord {
        pipingBasis = Collections.unmodifiableMap(new LinkedHashMap<>(pipingBasis));
    }
}
