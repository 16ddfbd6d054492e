package org.hosewright.evidence.calibration;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;

/** The numbers that a night determines, by id; a number that it cannot tell is not there.
 *
 * @param hoses loss of each hose
 * @param discharges loss of each discharge's piping
 * @param nozzles flow factor of each nozzle: true flow over rated
 * @param meters factor of each meter: reads over true
 * @param gauges offset of each gauge: reads less true
 */
public record Terms(
        Map<String, Known<HoseLoss>> hoses,
        Map<String, Known<PointLoss>> discharges,
        Map<String, Known<Ratio>> nozzles,
        Map<String, Known<Ratio>> meters,
        Map<String, Known<Pressure>> gauges) {
    public Terms {
        hoses = Collections.unmodifiableMap(new LinkedHashMap<>(hoses));
        discharges = Collections.unmodifiableMap(new LinkedHashMap<>(discharges));
        nozzles = Collections.unmodifiableMap(new LinkedHashMap<>(nozzles));
        meters = Collections.unmodifiableMap(new LinkedHashMap<>(meters));
        gauges = Collections.unmodifiableMap(new LinkedHashMap<>(gauges));
    }
}
