package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Gear;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.ReadWith;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;
import org.hosewright.evidence.night.Shown;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** Writes test nights shortly: one engine's gear, readings in psi, feet and gpm. */
final class NightWriter {
    private final Map<String, Hose> hoses = new LinkedHashMap<>();
    private final Set<String> book = new LinkedHashSet<>();
    private final Map<String, Discharge> discharges = new LinkedHashMap<>();
    private final Map<String, Nozzle> nozzles = new LinkedHashMap<>();
    private final Set<String> gauged = new LinkedHashSet<>();
    private final Map<String, Instrument> instruments = new LinkedHashMap<>();
    private final Map<String, Ruling> rulings = new LinkedHashMap<>();
    private final List<Reading> readings = new ArrayList<>();

    NightWriter hose(String id, double c) {
        hoses.put(
                id,
                new Hose(
                        id,
                        Length.ofInches(1.75),
                        Length.ofFeet(50),
                        Known.of(HoseLoss.ofUs(c)),
                        Optional.of(Pressure.ofPsi(300))));
        book.add(id);
        return this;
    }

    NightWriter discharge(String id) {
        discharges.put(id, new Discharge(id, Optional.of(Length.ofInches(2)), Optional.empty()));
        return this;
    }

    NightWriter nozzle(String id, Tip tip, boolean wasGauged) {
        return nozzle(Nozzle.of(id, tip), wasGauged);
    }

    NightWriter nozzle(Nozzle nozzle, boolean wasGauged) {
        nozzles.put(nozzle.id(), nozzle);
        if (wasGauged) {
            gauged.add(nozzle.id());
        }
        return this;
    }

    NightWriter ungauged(String nozzle) {
        gauged.remove(nozzle);
        return this;
    }

    NightWriter gauge(String id, double range, double share, Tap tap) {
        instruments.put(
                id,
                new Instrument.PressureGauge(
                        id,
                        Optional.of(Pressure.ofPsi(range)),
                        new Accuracy(share, Accuracy.Of.RANGE),
                        Optional.of(tap),
                        Optional.empty()));
        return this;
    }

    NightWriter meter(String id, double share) {
        instruments.put(id, new Instrument.FlowMeter(id, new Accuracy(share, Accuracy.Of.READING)));
        return this;
    }

    NightWriter ruling(String reading, boolean use, String reason) {
        rulings.put(reading, new Ruling(use, reason));
        return this;
    }

    /** Adds readings made with {@link #row}. */
    NightWriter rows(Row... rows) {
        for (Row row : rows) {
            readings.add(row.reading());
        }
        return this;
    }

    Night night() {
        return new Night(readings, new Gear(hoses, book, discharges, nozzles, gauged, instruments), rulings);
    }

    /** A reading in psi, feet and gpm; a negative number is one that was not read. */
    record Row(
            String id,
            String discharge,
            List<Stretch> hose,
            double rise,
            String nozzle,
            String setting,
            boolean shut,
            String lay,
            double pump,
            double tip,
            double flow,
            ReadWith with) {

        Row lay(String other) {
            return new Row(id, discharge, hose, rise, nozzle, setting, shut, other, pump, tip, flow, with);
        }

        Row setting(String other) {
            return new Row(id, discharge, hose, rise, nozzle, other, shut, lay, pump, tip, flow, with);
        }

        Row closed() {
            return new Row(id, discharge, hose, rise, nozzle, setting, true, lay, pump, tip, flow, with);
        }

        Row with(ReadWith other) {
            return new Row(id, discharge, hose, rise, nozzle, setting, shut, lay, pump, tip, flow, other);
        }

        Row hose(List<Stretch> other) {
            return new Row(id, discharge, other, rise, nozzle, setting, shut, lay, pump, tip, flow, with);
        }

        Row pump(double other) {
            return new Row(id, discharge, hose, rise, nozzle, setting, shut, lay, other, tip, flow, with);
        }

        Row tip(double other) {
            return new Row(id, discharge, hose, rise, nozzle, setting, shut, lay, pump, other, flow, with);
        }

        Row flow(double other) {
            return new Row(id, discharge, hose, rise, nozzle, setting, shut, lay, pump, tip, other, with);
        }

        Reading reading() {
            Laid laid = new Laid(
                    Optional.of("engine-41"),
                    discharge,
                    hose,
                    Optional.of(Length.ofFeet(rise)),
                    nozzle,
                    setting,
                    shut,
                    lay);
            Shown shown = new Shown(
                    Pressure.ofPsi(pump),
                    tip < 0 ? Optional.empty() : Optional.of(Pressure.ofPsi(tip)),
                    flow < 0 ? Optional.empty() : Optional.of(Flow.ofGpm(flow)),
                    Optional.empty(),
                    Optional.empty());
            return new Reading(id, laid, shown, with, false);
        }
    }

    /** A row on the company's usual gear: crosslay-1, one hose, gauge-a, gauge-b, meter-1. */
    static Row row(
            String id, String hose, double length, double rise, String nozzle, double pump, double tip, double flow) {
        return new Row(
                id,
                "crosslay-1",
                List.of(new Stretch(hose, Length.ofFeet(length))),
                rise,
                nozzle,
                "",
                false,
                "",
                pump,
                tip,
                flow,
                new ReadWith(Optional.of("gauge-a"), Optional.of("gauge-b"), Optional.of("meter-1")));
    }
}
