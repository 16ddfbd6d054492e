package org.hosewright.ledger.line;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.Kit;

/** The engine of each discharge that a night flew: engines may name their discharges alike.
 *
 * @param byDischarge id of the engine, by discharge; those not in it are the first engine's that has one of that name
 */
public record NightEngines(Map<String, String> byDischarge) {
    public static final NightEngines NONE = new NightEngines(Map.of());

    public NightEngines {
        byDischarge = Collections.unmodifiableMap(new LinkedHashMap<>(byDischarge));
    }

    /** The engines of a night's readings.
     *
     * @throws InvalidInput two engines flew discharges of one name
     */
    public static NightEngines of(List<Reading> readings) {
        NightEngines engines = NONE;
        for (Reading reading : readings) {
            engines = engines.with(reading);
        }
        return engines;
    }

    /** These with one more reading.
     *
     * @throws InvalidInput another engine flew a discharge of that name before
     */
    public NightEngines with(Reading reading) {
        String discharge = reading.laid().discharge();
        Optional<String> engine = reading.laid().engine();
        Optional<String> before = Optional.ofNullable(byDischarge.get(discharge));
        if (engine.isEmpty() || before.equals(engine)) {
            return this;
        }
        if (before.isPresent()) {
            throw new InvalidInput(
                    "engine of discharge " + discharge,
                    engine.get(),
                    before.get() + ", as in the readings before: a night of its own for each engine's " + discharge,
                    "reading " + reading.id());
        }
        Map<String, String> more = new LinkedHashMap<>(byDischarge);
        more.put(discharge, engine.get());
        return new NightEngines(more);
    }

    /** The engine that has a discharge: the one that flew it, else the first of the kit. */
    public Optional<EngineRecord> find(Kit kit, String discharge) {
        return kit.engines().values().stream()
                .filter(record -> record.engine().discharges().containsKey(discharge))
                .filter(record -> record.engine()
                        .id()
                        .equals(byDischarge.getOrDefault(
                                discharge, record.engine().id())))
                .findFirst();
    }
}
