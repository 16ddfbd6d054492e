package org.hosewright.evidence.joint;

import java.util.Optional;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** What makes a reading impossible, whatever the other readings say. */
final class Refusal {
    /** So many combined standard deviations above the possible are refused, not weighed. */
    private static final double SURELY = 4;

    /** A range and a reading in other units may be rounded. */
    private static final double ROUNDED = 1e-3;

    private final Rack rack;
    private final Says says;

    Refusal(Rack rack, UnitSystem units) {
        this.rack = rack;
        this.says = new Says(units);
    }

    /** Refuses a reading that cannot be.
     *
     * @throws InvalidInput with the reading named
     */
    void check(Reading reading) {
        try {
            checkLine(reading);
            checkRange(
                    "pump pressure",
                    "pump",
                    reading.shown().pump(),
                    reading.with().pumpGauge());
            reading.shown()
                    .tip()
                    .ifPresent(read -> checkRange(
                            "tip pressure", "tip", read, reading.with().tipGauge()));
            checkFlow(reading);
            checkTip(reading);
        } catch (InvalidInput wrong) {
            throw wrong.at("reading " + reading.id());
        }
    }

    private void checkLine(Reading reading) {
        Laid laid = reading.laid();
        if (laid.hose().isEmpty()) {
            throw new InvalidInput("hose", "none", "at least one hose with its length", "hose");
        }
        double long_m = laid.length().metres();
        double mid_m = reading.shown().mid().map(mid -> mid.fromPump().metres()).orElse(0.0);
        if (mid_m < 0 || mid_m >= long_m) {
            throw new InvalidInput(
                    "place of the in-line gauge",
                    says.length(mid_m),
                    "less than the line's " + says.length(long_m),
                    "mid at");
        }
    }

    /** Refuses more than a gauge can show: mostly a pressure typed in another unit than its column's. */
    private void checkRange(String what, String where, Pressure read, Optional<String> gauge) {
        Optional<Pressure> most = gauge.flatMap(rack::findRange);
        if (most.isPresent() && read.pascals() > most.get().pascals() * (1 + ROUNDED)) {
            throw new InvalidInput(
                    what,
                    says.pressure(read.pascals()),
                    "at most " + says.text(most.get()) + ", all that " + gauge.get()
                            + " shows; is it in the unit that its column names?",
                    where);
        }
    }

    private void checkFlow(Reading reading) {
        Laid laid = reading.laid();
        double flow_m3s = reading.shown().flow().map(Flow::cubicMetresPerSecond).orElse(-1.0);
        if (!laid.shut() && flow_m3s == 0) {
            throw new InvalidInput(
                    "flow", "0", "a flow above 0, or the setting \"shut\" where the nozzle was shut", "flow");
        }
        if (laid.shut() && flow_m3s > 0) {
            throw new InvalidInput("flow", says.flow(flow_m3s), "no flow with the nozzle shut", "flow");
        }
        if (!laid.shut() && flow_m3s < 0 && reading.shown().tip().isEmpty()) {
            throw new InvalidInput("reading", "neither tip nor flow", "the tip pressure, the flow, or both", "");
        }
    }

    private void checkTip(Reading reading) {
        if (reading.shown().tip().isEmpty()) {
            return;
        }
        double read_Pa = reading.shown().tip().get().pascals();
        if (!(read_Pa > 0)) {
            String would = reading.laid().shut() ? "a pressure above 0" : "a pressure above 0 with the nozzle open";
            throw new InvalidInput("tip pressure", says.pressure(read_Pa), would, "tip");
        }
        checkFall(reading, read_Pa);
    }

    /** Refuses a tip pressure above what the pump pressure and the fall of the ground allow. */
    private void checkFall(Reading reading, double read_Pa) {
        GaugeUse tip = rack.tipGauge(reading);
        GaugeUse pump = rack.pumpGauge(reading);
        double pump_Pa = reading.shown().pump().pascals();
        double head_Pa = Constants.WATER_PA_PER_M
                * reading.laid().rise().map(Length::metres).orElse(0.0);
        double share = TapView.of(reading, tip, rack.tip(reading)).share();
        double most_Pa = pump_Pa - head_Pa;
        double deviation_Pa = combined(pump, pump_Pa, 1) + combined(tip, read_Pa, 1 / share);
        double over_Pa = read_Pa / share - most_Pa;
        if (over_Pa > SURELY * Math.sqrt(deviation_Pa)) {
            throw new InvalidInput(
                    "tip pressure",
                    says.pressure(read_Pa),
                    "at most " + says.pressure(Math.max(0, most_Pa * share))
                            + ", which is what the pump pressure of " + says.pressure(pump_Pa)
                            + " and the rise of the ground leave; are pump and tip swapped?",
                    "tip");
        }
    }

    private static double combined(GaugeUse gauge, double read_Pa, double scale) {
        double fixed = gauge.fixed_Pa(read_Pa) * scale;
        double scatter = gauge.scatter_Pa(read_Pa) * scale;
        return fixed * fixed + scatter * scatter;
    }
}
