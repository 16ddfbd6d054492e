package org.hosewright.ledger.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** The instruments of a night, by where they read.
 *
 * @param records those at hand, by id
 */
record Instruments(Map<String, InstrumentRecord> records) {
    /** Those that are at hand.
     *
     * @param named ids; absent where all of the kit are
     * @throws InvalidInput the kit has no such instrument
     */
    static Instruments of(Kit kit, Optional<List<String>> named) {
        Map<String, InstrumentRecord> records = new LinkedHashMap<>();
        for (String id : named.orElse(List.copyOf(kit.instruments().keySet()))) {
            records.put(id, KitLines.get(kit.instruments(), id, "instrument"));
        }
        return new Instruments(records);
    }

    /** Gauges at the pump: the panel's own where it is named, and every other that taps before or behind the piping. */
    List<String> listAtPump(EngineRecord engine) {
        List<String> found = list(tap -> tap instanceof Tap.BeforePiping || tap instanceof Tap.AtDischarge);
        return engine.gauge()
                .filter(records::containsKey)
                .map(List::of)
                .orElse(found.isEmpty() ? found : List.of(found.get(0)));
    }

    /** The first gauge that taps at the tip. */
    Optional<String> findAtTip() {
        return list(tap -> tap instanceof Tap.Pitot || tap instanceof Tap.Side).stream()
                .findFirst();
    }

    Optional<String> findMeter() {
        return records.entrySet().stream()
                .filter(entry -> entry.getValue().instrument() instanceof Instrument.FlowMeter)
                .map(entry -> entry.getKey())
                .findFirst();
    }

    private List<String> list(Predicate<Tap> place) {
        return records.entrySet().stream()
                .filter(entry -> entry.getValue().instrument() instanceof Instrument.PressureGauge gauge
                        && gauge.tap().filter(place).isPresent())
                .map(entry -> entry.getKey())
                .toList();
    }
}
