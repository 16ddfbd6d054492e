package org.hosewright.documents.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.kit.InstrumentRecord;

/** The gauges and meters of the night: what each was read for, where it taps, how well it reads. */
final class Instruments {
    private Instruments() {}

    static Html html(DrillReport report, Figures figures) {
        Map<String, String> used = new LinkedHashMap<>();
        for (Reading reading : report.night().readings()) {
            reading.with().pumpGauge().ifPresent(id -> used.putIfAbsent(id, "pump pressure"));
            reading.with().tipGauge().ifPresent(id -> used.putIfAbsent(id, "tip pressure"));
            reading.with().meter().ifPresent(id -> used.putIfAbsent(id, "flow"));
        }
        List<String> says = new ArrayList<>();
        used.forEach(
                (id, what) -> Optional.ofNullable(report.kit().instruments().get(id))
                        .ifPresent(record -> says.add(says(record, what, figures))));
        return Parts.list(says);
    }

    private static String says(InstrumentRecord record, String what, Figures figures) {
        Instrument instrument = record.instrument();
        String where = instrument instanceof Instrument.PressureGauge gauge
                ? gauge.tap().map(tap -> ", " + tap(tap, figures)).orElse(", where it taps is not known")
                : "";
        String calibrated =
                record.calibrated().map(d -> ", calibrated " + Figures.day(d)).orElse(", no calibration known");
        return Figures.sentence(Figures.name(instrument.id())) + ": " + what + where + ", "
                + accuracy(instrument.accuracy()) + calibrated + ".";
    }

    private static String accuracy(Accuracy accuracy) {
        double percent = 100 * accuracy.share();
        String share = Numbers.plain(percent) + " %";
        return share + (accuracy.of() == Accuracy.Of.RANGE ? " of its range" : " of what it reads");
    }

    private static String tap(Tap tap, Figures figures) {
        if (tap instanceof Tap.Pitot) {
            return "a pitot at the tip";
        }
        if (tap instanceof Tap.Side side) {
            return side.inside()
                    .map(d -> "a side tap, " + figures.shown().size(d) + " inside")
                    .orElse("a side tap, inside diameter not known");
        }
        return tap instanceof Tap.AtDischarge
                ? "at the discharge, behind its piping"
                : "on the panel, before the discharge piping";
    }
}
