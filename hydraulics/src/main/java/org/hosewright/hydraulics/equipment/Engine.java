package org.hosewright.hydraulics.equipment;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Volume;

/** A pumping engine.
 *
 * @param id the company's name for it
 * @param rated rated capacity of its pump, where known
 * @param ceiling the company's own highest pump pressure, where set
 * @param tank water carried, where known
 * @param discharges its outlets by id, in the company's order
 */
public record Engine(
        String id,
        Optional<Flow> rated,
        Optional<Pressure> ceiling,
        Optional<Volume> tank,
        Map<String, Discharge> discharges) {
    public Engine {
        discharges = Collections.unmodifiableMap(new LinkedHashMap<>(discharges));
    }

    /** The discharge of a name.
     *
     * @throws InvalidInput the engine has none of that name
     */
    public Discharge getDischarge(String name) {
        Discharge found = discharges.get(name);
        if (found == null) {
            throw new InvalidInput("discharge of " + id, name, String.join(", ", discharges.keySet()), "");
        }
        return found;
    }
}
