package org.hosewright.evidence.calibration;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
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

    /** The numbers that a belief tells. */
    static Terms of(Survey survey, Belief belief) {
        return new Terms(
                told(survey, Role.HOSE, belief::hose),
                told(survey, Role.PIPING, belief::discharge),
                told(survey, Role.NOZZLE, belief::tipFactor),
                told(survey, Role.METER, belief::meter),
                told(survey, Role.OFFSET, belief::gauge));
    }

    private static <Q extends Quantity> Map<String, Known<Q>> told(
            Survey survey, Role role, Function<String, Optional<Known<Q>>> answer) {
        Map<String, Known<Q>> told = new LinkedHashMap<>();
        for (int place : survey.joint().unknowns().listOf(role)) {
            Unknown unknown = survey.joint().unknowns().get(place);
            if (!survey.isUnnamed(unknown)) {
                answer.apply(unknown.id()).ifPresent(known -> told.put(unknown.id(), known));
            }
        }
        return told;
    }
}
