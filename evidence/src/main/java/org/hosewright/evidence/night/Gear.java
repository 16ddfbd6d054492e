package org.hosewright.evidence.night;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;

/** The company's equipment as a night's analysis sees it, by id; losses in it are the numbers held before the night.
 *
 * @param hoses hoses
 * @param bookHoses ids of hoses whose loss is not measured (book, maker, estimate): wide prior
 * @param discharges discharges
 * @param nozzles nozzles
 * @param gauged ids of smooth bore nozzles whose bore was gauged for this night
 * @param instruments gauges and meters
 */
public record Gear(
        Map<String, Hose> hoses,
        Set<String> bookHoses,
        Map<String, Discharge> discharges,
        Map<String, Nozzle> nozzles,
        Set<String> gauged,
        Map<String, Instrument> instruments) {
    public Gear {
        hoses = Collections.unmodifiableMap(new LinkedHashMap<>(hoses));
        bookHoses = Collections.unmodifiableSet(new LinkedHashSet<>(bookHoses));
        discharges = Collections.unmodifiableMap(new LinkedHashMap<>(discharges));
        nozzles = Collections.unmodifiableMap(new LinkedHashMap<>(nozzles));
        gauged = Collections.unmodifiableSet(new LinkedHashSet<>(gauged));
        instruments = Collections.unmodifiableMap(new LinkedHashMap<>(instruments));
    }
}
