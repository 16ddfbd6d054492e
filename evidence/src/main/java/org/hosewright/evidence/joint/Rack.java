package org.hosewright.evidence.joint;

import java.util.Optional;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Instrument.FlowMeter;
import org.hosewright.evidence.instrument.Instrument.PressureGauge;
import org.hosewright.evidence.night.Gear;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Pressure;
import org.jspecify.annotations.Nullable;

/** The gear of a night, found by the names that readings use.
 *
 * @param gear the gear
 */
record Rack(Gear gear) {
    static final String PUMP_GAUGE = "pump gauge";
    static final String TIP_GAUGE = "tip gauge";
    static final String MID_GAUGE = "in-line gauge";
    static final String METER = "flow meter";

    Hose hose(String id) {
        return found("hose", id, gear.hoses().get(id), gear.hoses().keySet());
    }

    Discharge discharge(String id) {
        return found(
                "discharge", id, gear.discharges().get(id), gear.discharges().keySet());
    }

    Nozzle nozzle(String id) {
        return found("nozzle", id, gear.nozzles().get(id), gear.nozzles().keySet());
    }

    Tip tip(Reading reading) {
        return nozzle(reading.laid().nozzle()).rated(reading.laid().setting());
    }

    GaugeUse pumpGauge(Reading reading) {
        return reading.with()
                .pumpGauge()
                .map(id -> GaugeUse.of(gauge(id), Priors.PUMP_RANGE))
                .orElseGet(() -> GaugeUse.unnamed(PUMP_GAUGE, Priors.PUMP_RANGE));
    }

    GaugeUse tipGauge(Reading reading) {
        return reading.with()
                .tipGauge()
                .map(id -> GaugeUse.of(gauge(id), Priors.TIP_RANGE))
                .orElseGet(() -> GaugeUse.unnamed(TIP_GAUGE, Priors.TIP_RANGE));
    }

    GaugeUse midGauge() {
        return GaugeUse.unnamed(MID_GAUGE, Priors.PUMP_RANGE);
    }

    /** The share of the reading that is a meter's fixed error. */
    double meterShare(Reading reading) {
        return reading.with().meter().map(id -> meter(id).accuracy().share()).orElse(Priors.METER_SHARE);
    }

    /** The most that a gauge shows, where that is known. */
    Optional<Pressure> findRange(String gauge) {
        return gauge(gauge).range();
    }

    private PressureGauge gauge(String id) {
        Instrument found = found(
                "gauge", id, gear.instruments().get(id), gear.instruments().keySet());
        if (found instanceof PressureGauge gauge) {
            return gauge;
        }
        throw new InvalidInput("gauge", id, "a pressure gauge; " + id + " is a flow meter", "");
    }

    private FlowMeter meter(String id) {
        Instrument found = found(
                "meter", id, gear.instruments().get(id), gear.instruments().keySet());
        if (found instanceof FlowMeter meter && meter.accuracy().of() == Accuracy.Of.READING) {
            return meter;
        }
        throw new InvalidInput("meter", id, "a flow meter with its accuracy as a share of the reading", "");
    }

    private static <T> T found(String what, String id, @Nullable T thing, Iterable<String> known) {
        if (thing == null) {
            throw new InvalidInput(what, id, "one of " + String.join(", ", known), "");
        }
        return thing;
    }
}
