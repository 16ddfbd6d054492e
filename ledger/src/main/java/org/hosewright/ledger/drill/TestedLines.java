package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;

/** Sorts a night's readings into the lines that were flown. */
final class TestedLines {
    private TestedLines() {}

    /** The lines of a night in the order first flown; static readings do not count. */
    static List<TestedLine> of(Night night, Calibration calibration) {
        Map<String, List<Reading>> byLine = new LinkedHashMap<>();
        for (Reading reading : night.readings()) {
            if (!reading.laid().shut()) {
                byLine.computeIfAbsent(key(reading.laid()), any -> new ArrayList<>())
                        .add(reading);
            }
        }
        return byLine.values().stream()
                .map(readings -> of(readings, night, calibration))
                .toList();
    }

    private static TestedLine of(List<Reading> readings, Night night, Calibration calibration) {
        Laid first = readings.get(0).laid();
        TreeMap<Double, List<Stretch>> chains = new TreeMap<>();
        TreeSet<Double> flows_m3s = new TreeSet<>();
        for (Reading reading : readings) {
            chains.putIfAbsent(reading.laid().length().metres(), reading.laid().hose());
            flows_m3s.add(flow_m3s(reading, night, calibration));
        }
        return new TestedLine(
                first.discharge(),
                List.copyOf(chains.values()),
                first.nozzle(),
                first.setting(),
                new Flow(flows_m3s.first()),
                new Flow(flows_m3s.last()));
    }

    private static double flow_m3s(Reading reading, Night night, Calibration calibration) {
        Tip tip = Objects.requireNonNull(
                        night.gear().nozzles().get(reading.laid().nozzle()))
                .rated(reading.laid().setting());
        boolean byMeter =
                reading.shown().tip().isEmpty() && reading.shown().flow().isPresent();
        if (byMeter) {
            double factor = reading.with()
                    .meter()
                    .flatMap(meter ->
                            Optional.ofNullable(calibration.terms().meters().get(meter)))
                    .map(known -> known.value().value())
                    .orElse(1.0);
            return reading.shown().flow().get().cubicMetresPerSecond() / factor;
        }
        return reading.shown().tip().map(p -> tip.flow_m3s(p.pascals())).orElse(0.0);
    }

    private static String key(Laid laid) {
        List<String> hoses = laid.hose().stream().map(Stretch::hose).toList();
        return String.join("|", laid.discharge(), String.join("+", hoses), laid.nozzle(), laid.setting());
    }

    static Length length(List<Stretch> chain) {
        double sum_m = 0;
        for (Stretch part : chain) {
            sum_m += part.length().metres();
        }
        return new Length(sum_m);
    }
}
