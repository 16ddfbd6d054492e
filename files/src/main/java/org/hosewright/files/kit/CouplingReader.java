package org.hosewright.files.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.term.CouplingText;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.ledger.kit.Coupling;
import org.hosewright.ledger.kit.Couplings;
import org.hosewright.ledger.kit.Couplings.Through;

/** The reader of the couplings of discharges, appliances and adapters of a kit file. */
final class CouplingReader {
    static final String KEY = "coupling";
    static final String IN = "in";
    static final String OUT = "out";
    private static final String ALLOWED = "a size and a kind of thread, as in '2 1/2 in NH'";

    private CouplingReader() {}

    static Couplings of(YamlMap file) {
        return new Couplings(
                discharges(file),
                appliances(file),
                file.findMap("adapters")
                        .map(map -> map.byId("an adapter", (id, value) -> adapter(value.map())))
                        .orElse(Map.of()));
    }

    private static Map<String, Coupling> discharges(YamlMap file) {
        Map<String, Coupling> found = new LinkedHashMap<>();
        own(file, "engines")
                .forEach((engine, map) -> own(map, "discharges")
                        .forEach((id, outlet) -> outlet.find(KEY)
                                .map(CouplingText::read)
                                .ifPresent(coupling -> found.put(Couplings.discharge(engine, id), coupling))));
        return found;
    }

    private static Map<String, Through> appliances(YamlMap file) {
        Map<String, Through> found = new LinkedHashMap<>();
        own(file, "appliances").forEach((id, map) -> {
            Through sides = new Through(
                    map.find(IN).map(CouplingText::read), map.find(OUT).map(CouplingText::read));
            if (!sides.equals(Through.UNSAID)) {
                found.put(id, sides);
            }
        });
        return found;
    }

    private static Through adapter(YamlMap map) {
        map.only(IN, OUT);
        return new Through(
                Optional.of(CouplingText.read(map.get(IN, ALLOWED))),
                Optional.of(CouplingText.read(map.get(OUT, ALLOWED))));
    }

    /** The entries of a section, keys of the company's own left out. */
    private static Map<String, YamlMap> own(YamlMap map, String section) {
        Map<String, YamlMap> found = new LinkedHashMap<>();
        map.findMap(section)
                .ifPresent(all -> all.entries().forEach((id, value) -> {
                    if (!id.startsWith("x-")) {
                        found.put(id, value.map());
                    }
                }));
        return found;
    }
}
