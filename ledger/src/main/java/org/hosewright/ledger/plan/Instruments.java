package org.hosewright.ledger.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.Kit;

/** The company's instruments, by where they read.
 *
 * @param kit the kit
 */
record Instruments(Kit kit) {
    /** Gauges at the pump: the panel's own where it is named, and every other that taps before or behind the piping. */
    List<String> listAtPump(EngineRecord engine) {
        List<String> found = list(tap -> tap instanceof Tap.BeforePiping || tap instanceof Tap.AtDischarge);
        return engine.gauge()
                .filter(kit.instruments()::containsKey)
                .map(List::of)
                .orElse(found.isEmpty() ? found : List.of(found.get(0)));
    }

    /** The first gauge that taps at the tip. */
    Optional<String> findAtTip() {
        return list(tap -> tap instanceof Tap.Pitot || tap instanceof Tap.Side).stream()
                .findFirst();
    }

    Optional<String> findMeter() {
        return kit.instruments().entrySet().stream()
                .filter(entry -> entry.getValue().instrument() instanceof Instrument.FlowMeter)
                .map(entry -> entry.getKey())
                .findFirst();
    }

    private List<String> list(Predicate<Tap> place) {
        return kit.instruments().entrySet().stream()
                .filter(entry -> entry.getValue().instrument() instanceof Instrument.PressureGauge gauge
                        && gauge.tap().filter(place).isPresent())
                .map(entry -> entry.getKey())
                .toList();
    }
}
