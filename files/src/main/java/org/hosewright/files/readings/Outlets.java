package org.hosewright.files.readings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.term.Names;
import org.hosewright.ledger.kit.Kit;

/** The discharges that a reading may name, and the engine each belongs to. */
final class Outlets {
    private Outlets() {}

    static List<String> names(Kit kit) {
        return kit.engines().values().stream()
                .flatMap(engine -> engine.engine().discharges().keySet().stream())
                .distinct()
                .toList();
    }

    /** The engine of a row's discharge: the one it names, else the only one that has such a discharge. */
    static Optional<String> findEngine(String discharge, Cells cells, Kit kit) {
        List<String> having = kit.engines().entrySet().stream()
                .filter(engine -> engine.getValue().engine().discharges().containsKey(discharge))
                .map(Map.Entry::getKey)
                .toList();
        if (having.isEmpty()) {
            throw cells.refused(Column.DISCHARGE, "discharge", Names.known(discharge, names(kit)));
        }
        Optional<String> named = cells.find(Column.ENGINE);
        if (named.isPresent() && !having.contains(named.get())) {
            throw cells.refused(Column.ENGINE, "engine of discharge " + discharge, String.join(", ", having));
        }
        if (named.isEmpty() && having.size() > 1) {
            throw cells.refused(
                    Column.DISCHARGE,
                    "a discharge of several engines",
                    "a column 'engine' that says which of " + String.join(", ", having));
        }
        return named.isPresent() ? named : Optional.of(having.get(0));
    }
}
