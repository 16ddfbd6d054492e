package org.hosewright.evidence.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Priors;
import org.hosewright.evidence.night.Gear;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** What a test night is flown with.
 *
 * @param line the line as it usually lies, with the numbers held of it so far
 * @param onHand how much there is of its last hose
 * @param rise the tip above the pump with all of that hose laid; shorter lays share the slope
 * @param gear the equipment by id, for the fit
 * @param pumpGauges ids of the gauges at the pump that are read; not empty
 * @param tipGauge id of the gauge at the tip, where there is one
 * @param meter id of the flow meter, where there is one
 * @param bounds ceiling, pump, crew, water supply, and the age of the hose's service tests
 * @param errors how the errors of the numbers held hang together
 * @param units the company's units
 */
public record Means(
        Line line,
        Length onHand,
        Length rise,
        Gear gear,
        List<String> pumpGauges,
        Optional<String> tipGauge,
        Optional<String> meter,
        Bounds bounds,
        LossErrors errors,
        UnitSystem units) {
    /** Mean of a half-normal of unit width: sqrt(2/pi). */
    private static final double HALF_NORMAL_MEAN = Math.sqrt(2 / Math.PI);

    public Means {
        pumpGauges = List.copyOf(pumpGauges);
    }

    /** The same with a loss of the piping to foretell with: where none is known, what is believed beforehand on average. */
    Means withPiping() {
        if (line.discharge().loss().isPresent()) {
            return this;
        }
        PointLoss mean = new PointLoss(HALF_NORMAL_MEAN * Priors.PIPING);
        Discharge piped = new Discharge(line.discharge().id(), line.discharge().size(), Optional.of(Known.of(mean)));
        Map<String, Discharge> discharges = new LinkedHashMap<>(gear.discharges());
        discharges.put(piped.id(), piped);
        Gear known =
                new Gear(gear.hoses(), gear.bookHoses(), discharges, gear.nozzles(), gear.gauged(), gear.instruments());
        Line with = new Line(piped, line.runs(), line.nozzle(), line.setting());
        return new Means(with, onHand, rise, known, pumpGauges, tipGauge, meter, bounds, errors, units);
    }

    /** The line with all of its last hose. */
    Line longest() {
        return line.withLastLength(onHand);
    }

    /** True for a gauge at the discharge, which does not see the piping. */
    boolean isBehindPiping(String pumpGauge) {
        return gear.instruments().get(pumpGauge) instanceof Instrument.PressureGauge gauge
                && gauge.tap().filter(Tap.AtDischarge.class::isInstance).isPresent();
    }
}
