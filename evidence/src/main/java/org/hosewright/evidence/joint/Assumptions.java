package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Instrument.PressureGauge;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.PointLoss;

/** The sentences that say what a night's numbers take as given. */
final class Assumptions {
    private final Night night;
    private final Rack rack;
    private final Unknowns unknowns;
    private final Says says;
    private final Assumed assumed = new Assumed();

    Assumptions(Night night, Rack rack, Unknowns unknowns) {
        this.night = night;
        this.rack = rack;
        this.unknowns = unknowns;
        this.says = new Says(night.units());
    }

    List<String> list() {
        tips();
        unwritten();
        unknowns.list().forEach(this::prior);
        if (!night.readings().isEmpty()) {
            assumed.say(
                    "scatter from reading to reading: begins at a quarter of each instrument's accuracy plus half its "
                            + "least count, then estimated from the readings");
        }
        return assumed.list();
    }

    private void tips() {
        for (Reading reading : night.readings()) {
            if (!reading.laid().shut()) {
                tip(reading.laid().nozzle(), rack.tip(reading), reading);
            }
        }
    }

    private void tip(String id, Tip tip, Reading reading) {
        if (tip instanceof Automatic) {
            assumed.say(id + ": an automatic tip's pressure says nothing about its flow");
        } else if (tip instanceof SmoothBore bore && rack.gear().gauged().contains(id)) {
            assumed.say(id + ": bore " + says.text(bore.bore()) + " gauged, flow within "
                    + Says.percent(Priors.GAUGED_BORE) + " of the formula's (one standard deviation)");
        } else if (tip instanceof SmoothBore bore) {
            double wider = bore.bore().inches() + 1.0 / 64;
            double more = wider * wider / (bore.bore().inches() * bore.bore().inches()) - 1;
            assumed.say(id + ": bore " + says.text(bore.bore()) + " taken as true; 1/64 in wider means "
                    + Says.percent(more) + " more flow");
        } else {
            boolean metered = reading.shown().flow().isPresent();
            assumed.say(id + ": flow and hose loss rest on the tip's rating" + (metered ? " and the meter" : "")
                    + "; it is taken to flow 1.05 ± 0.07 of it, since makers rate low");
        }
    }

    private void unwritten() {
        List<String> level = new ArrayList<>();
        for (Reading reading : night.readings()) {
            if (reading.laid().rise().isEmpty()) {
                level.add(reading.id());
            }
            gauges(reading);
        }
        if (!level.isEmpty()) {
            assumed.say("rise not written, taken as level: reading " + String.join(", ", level));
        }
    }

    private void gauges(Reading reading) {
        GaugeUse pump = rack.pumpGauge(reading);
        described(pump, Priors.PUMP_RANGE);
        if (pump.tap().isEmpty()) {
            assumed.say(pump.id() + ": taken to tap before the piping, since its tap is not written");
        }
        if (reading.shown().tip().isPresent()) {
            GaugeUse tip = rack.tipGauge(reading);
            described(tip, Priors.TIP_RANGE);
            if (tip.tap().isEmpty()
                    && rack.tip(reading) instanceof SmoothBore
                    && !reading.laid().shut()) {
                assumed.say(tip.id()
                        + ": taken as a pitot, since its tap is not written; on a side tap the true tip pressure "
                        + "and flow would be higher");
            }
        }
        if (reading.shown().mid().isPresent()) {
            described(rack.midGauge(), Priors.PUMP_RANGE);
            assumed.say("in-line gauge: the ground taken to rise evenly from pump to tip");
        }
        if (reading.shown().flow().isPresent() && reading.with().meter().isEmpty()) {
            assumed.say("flow meter: not named, taken as good within " + Says.percent(Priors.METER_SHARE));
        }
    }

    private void described(GaugeUse gauge, double usualRange) {
        if (!gauge.named()) {
            assumed.say(gauge.id() + ": not named, taken as good within " + says.pressure(gauge.fixed()));
            return;
        }
        Instrument instrument = night.gear().instruments().get(gauge.id());
        if (instrument instanceof PressureGauge known && known.range().isEmpty()) {
            assumed.say(gauge.id() + ": range not written, taken as " + says.pressure(usualRange));
        }
        if (instrument instanceof PressureGauge known && known.leastCount().isEmpty()) {
            assumed.say(gauge.id() + ": least count not written, taken as " + says.pressure(gauge.leastCount()));
        }
    }

    private void prior(Unknown unknown) {
        switch (unknown.role()) {
            case HOSE ->
                assumed.say("beforehand, " + unknown.id() + " loses "
                        + says.text(new HoseLoss(unknown.centre())) + ", within about "
                        + Says.percent(unknown.deviation()) + " (one standard deviation): the readings decide");
            case PIPING ->
                assumed.say("beforehand, the piping of " + unknown.id() + " loses between nothing and about "
                        + says.text(new PointLoss(2 * unknown.deviation())) + ": the readings decide");
            case METER ->
                assumed.say("fixed error of " + unknown.id() + ": " + Says.percent(unknown.deviation())
                        + " of the reading (one standard deviation)");
            case OFFSET ->
                assumed.say("fixed error of " + unknown.id() + ": " + says.pressure(unknown.deviation())
                        + " (one standard deviation)");
            case SPAN ->
                assumed.say("fixed error of " + unknown.id() + ": " + Says.percent(unknown.deviation())
                        + " of the reading (one standard deviation)");
            case NOZZLE, TAP, FAULT -> {}
        }
    }
}
