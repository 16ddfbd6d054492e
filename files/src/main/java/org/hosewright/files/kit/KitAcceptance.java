package org.hosewright.files.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.calibration.Judged;
import org.hosewright.evidence.calibration.Terms;
import org.hosewright.files.yaml.YamlText;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.TestedLine;
import org.hosewright.ledger.kit.Kit;

/** The taking over of a night's numbers into the kit: only what the night determined, each with its standard error.
 *
 * <p>What it did not determine keeps its value and its basis. The batch that was flown is meant, not every hose of its
 * size.
 */
public final class KitAcceptance {
    /** Correlations are kept to this [1]. */
    private static final double CORRELATION_STEP = 0.001;

    private final KitDocument before;
    private final DrillReport report;
    private final Terms terms;
    private final String night;
    private final List<Taken> taken = new ArrayList<>();
    private final List<KitChange> changes = new ArrayList<>();

    private KitAcceptance(KitDocument before, DrillReport report) {
        this.before = before;
        this.report = report;
        this.terms = report.calibration().terms();
        this.night = NightName.of(report, before.kit());
    }

    /** A kit with a night's numbers in it.
     *
     * @param document the new kit; the old one where nothing was taken
     * @param taken each number taken over, in the order of the kit
     */
    public record Accepted(KitDocument document, List<Taken> taken) {
        public Accepted {
            taken = List.copyOf(taken);
        }
    }

    /** One number taken over.
     *
     * @param path where it stands in the kit file
     * @param was the text that stood there; empty where none did
     * @param now the text that stands there
     */
    public record Taken(List<String> path, String was, String now) {
        public Taken {
            path = List.copyOf(path);
        }
    }

    /** The kit that holds a night's numbers.
     *
     * @param before the kit as it stands
     * @param report the night, analysed with that kit
     */
    public static Accepted of(KitDocument before, DrillReport report) {
        return new KitAcceptance(before, report).accepted();
    }

    private Accepted accepted() {
        Kit kit = before.kit();
        terms.hoses().forEach((id, loss) -> {
            Optional<Known<?>> was = Optional.ofNullable(kit.hoses().get(id))
                    .map(hose -> hose.hose().loss());
            take(List.of("hoses", id, "loss"), was, loss);
            changes.add(new KitChange.Set(List.of("hoses", id, "basis"), "test " + night));
        });
        terms.nozzles().forEach((id, factor) -> {
            var nozzle = kit.nozzles().get(id);
            take(
                    List.of("nozzles", id, "flow"),
                    nozzle == null ? Optional.empty() : nozzle.nozzle().flow(),
                    factor);
        });
        engines().forEach(this::takePiping);
        terms.gauges().forEach((id, offset) -> {
            var gauge = kit.instruments().get(id);
            take(List.of("instruments", id, "offset"), gauge == null ? Optional.empty() : gauge.offset(), offset);
        });
        if (taken.isEmpty()) {
            return new Accepted(before, List.of());
        }
        forgetOldCorrelations();
        changes.add(new KitChange.Set(List.of("evidence", night), YamlText.of(evidence())));
        return new Accepted(before.with(changes), taken);
    }

    private void takePiping(String discharge, String engine) {
        var record = before.kit().engines().get(engine);
        var outlet = record == null ? null : record.engine().discharges().get(discharge);
        var loss = terms.discharges().get(discharge);
        if (outlet != null && loss != null) {
            List<String> path = List.of("engines", engine, "discharges", discharge);
            take(below(path, "loss"), outlet.loss(), loss);
            changes.add(new KitChange.Set(below(path, "basis"), "test " + night));
        }
    }

    private void take(List<String> path, Optional<? extends Known<?>> was, Known<?> now) {
        QuantityShown shown = QuantityShown.of(before.kit().units());
        String text = shown.fileTextRounded(now);
        taken.add(new Taken(path, was.map(shown::fileText).orElse(""), text));
        changes.add(new KitChange.Set(path, text));
    }

    /** The engine that each determined discharge was flown on. */
    private Map<String, String> engines() {
        Map<String, String> engines = new LinkedHashMap<>();
        report.night()
                .readings()
                .forEach(reading -> reading.laid().engine().ifPresent(engine -> {
                    if (terms.discharges().containsKey(reading.laid().discharge())) {
                        engines.putIfAbsent(reading.laid().discharge(), engine);
                    }
                }));
        return engines;
    }

    /** A number replaced has no longer to do with the errors of the night that it came from. */
    private void forgetOldCorrelations() {
        TreeSet<String> replaced = new TreeSet<>(terms.hoses().keySet());
        replaced.addAll(terms.discharges().keySet());
        replaced.addAll(terms.nozzles().keySet());
        before.kit().evidence().forEach((old, record) -> {
            for (String pair : record.correlation().keySet()) {
                List<String> path = List.of("evidence", old, "correlation", pair);
                int slash = pair.indexOf('/');
                boolean stale =
                        replaced.contains(pair.substring(0, slash)) || replaced.contains(pair.substring(slash + 1));
                if (stale && !old.equals(night)) {
                    changes.add(new KitChange.Remove(path));
                }
            }
        });
    }

    private Map<String, Object> evidence() {
        Calibration calibration = report.calibration();
        Map<String, Object> entry = new LinkedHashMap<>();
        report.date().ifPresent(date -> entry.put("date", date.toString()));
        entry.put("readings", (int)
                calibration.readings().stream().filter(Judged::used).count());
        longest()
                .ifPresent(
                        length -> entry.put("longest", new Written(before.kit().units()).length(length)));
        Map<String, Object> correlations = new LinkedHashMap<>();
        for (String hose : terms.hoses().keySet()) {
            for (String discharge : terms.discharges().keySet()) {
                double correlation = calibration.belief().correlation(hose, discharge);
                double rounded = Numbers.toNearest(correlation, CORRELATION_STEP);
                correlations.put(hose + "/" + discharge, Double.valueOf(Numbers.fixed(rounded, 3)));
            }
        }
        if (!correlations.isEmpty()) {
            entry.put("correlation", correlations);
        }
        return entry;
    }

    private Optional<Length> longest() {
        return report.lines().stream().map(TestedLine::longest).max(java.util.Comparator.comparingDouble(Length::si));
    }

    private static List<String> below(List<String> path, String key) {
        List<String> longer = new ArrayList<>(path);
        longer.add(key);
        return longer;
    }
}
