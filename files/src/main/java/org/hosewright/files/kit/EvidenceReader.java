package org.hosewright.files.kit;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.ledger.kit.FlownRange;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;

/** The reader of what a kit file remembers of its test nights. */
final class EvidenceReader {
    private static final String CORRELATION = "a number from -1 to 1";
    private static final int MOST_READINGS = 100_000;

    private EvidenceReader() {}

    static NightRecord night(YamlMap map, Kit kit) {
        map.only("date", "readings", "correlation", "longest", "flown", "flow");
        Map<String, Double> correlations = new LinkedHashMap<>();
        map.findMap("correlation")
                .ifPresent(all -> all.entries().forEach((pair, value) -> {
                    if (!pair.startsWith("x-")) {
                        checkPair(pair, value, kit);
                        correlations.put(pair, correlation(value));
                    }
                }));
        Optional<YamlValue> readings = map.find("readings");
        return new NightRecord(
                map.find("date").map(Quantities::day),
                readings.isPresent()
                        ? OptionalInt.of(Quantities.whole(readings.get(), "count of readings", 0, MOST_READINGS))
                        : OptionalInt.empty(),
                correlations,
                map.find("longest").map(value -> (Length) Quantities.positive(Kind.LENGTH, value)),
                flown(map, kit),
                flows(map, kit));
    }

    private static Map<String, FlownRange> flown(YamlMap map, Kit kit) {
        return map.findMap("flown")
                .map(all -> all.byId("a hose or a discharge", (id, value) -> {
                    if (!lossy(kit).contains(id)) {
                        String allowed = "one of " + String.join(", ", lossy(kit));
                        throw new InvalidInput(
                                "hose or discharge", id, allowed, value.place().text());
                    }
                    return range(value.map());
                }))
                .orElse(Map.of());
    }

    private static FlownRange range(YamlMap map) {
        map.only("from", "to");
        YamlValue to = map.get("to", Kind.FLOW.inWords());
        Flow least = Quantities.flow(map.get("from", Kind.FLOW.inWords()));
        Flow most = Quantities.flow(to);
        if (most.cubicMetresPerSecond() < least.cubicMetresPerSecond()) {
            throw to.refused("highest flow flown", "not below the lowest");
        }
        return new FlownRange(least, most);
    }

    private static Set<String> lossy(Kit kit) {
        Set<String> known = new LinkedHashSet<>(kit.hoses().keySet());
        kit.engines()
                .values()
                .forEach(engine -> known.addAll(engine.engine().discharges().keySet()));
        return known;
    }

    private static Map<String, Known<Ratio>> flows(YamlMap map, Kit kit) {
        Map<String, Known<Ratio>> flows = new LinkedHashMap<>();
        map.findMap("flow")
                .ifPresent(all -> all.entries().forEach((nozzle, value) -> {
                    if (!nozzle.startsWith("x-")) {
                        if (!tips(kit).contains(nozzle)) {
                            String allowed = "one of " + String.join(", ", tips(kit));
                            throw new InvalidInput(
                                    "nozzle", nozzle, allowed, value.place().text());
                        }
                        flows.put(nozzle, NozzleReader.factor(value));
                    }
                }));
        return flows;
    }

    /** The names of the kit's tips: nozzles, with the setting where there are several. */
    private static Set<String> tips(Kit kit) {
        Set<String> names = new LinkedHashSet<>();
        kit.nozzles()
                .values()
                .forEach(record -> record.nozzle()
                        .settings()
                        .keySet()
                        .forEach(setting -> names.add(record.nozzle().tipName(setting))));
        return names;
    }

    private static void checkPair(String pair, YamlValue value, Kit kit) {
        Set<String> known = lossy(kit);
        known.addAll(tips(kit));
        String[] names = pair.split("/", -1);
        boolean good = names.length == 2 && known.containsAll(List.of(names)) && !names[0].equals(names[1]);
        if (!good) {
            String allowed = "two that the kit has, as in hose/discharge: " + String.join(", ", known);
            throw new InvalidInput(
                    "a correlation's pair", pair, allowed, value.place().text());
        }
    }

    private static double correlation(YamlValue value) {
        String text = value.text(CORRELATION);
        if (!text.matches("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?")) {
            throw value.refused("correlation", CORRELATION);
        }
        double number = Double.parseDouble(text);
        if (!(Math.abs(number) <= 1)) {
            throw value.refused("correlation", CORRELATION);
        }
        return number;
    }
}
