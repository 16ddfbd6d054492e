package org.hosewright.ledger.kit;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Ratio;

/** What the kit remembers of a test night whose numbers it took over.
 *
 * @param date the night, where known
 * @param readings how many readings its numbers rest on, where known
 * @param correlation correlations of the errors it left, by "hose/discharge" or "hose/nozzle"
 * @param tested the longest line flown, where known
 * @param flown the flows that each loss was flown at, by hose or discharge, where known
 * @param flow what was believed of each tip's flow factor when the losses were fitted, by nozzle
 */
public record NightRecord(
        Optional<LocalDate> date,
        OptionalInt readings,
        Map<String, Double> correlation,
        Optional<Length> tested,
        Map<String, FlownRange> flown,
        Map<String, Known<Ratio>> flow) {
    public NightRecord {
        correlation = Collections.unmodifiableMap(new LinkedHashMap<>(correlation));
        flown = Collections.unmodifiableMap(new LinkedHashMap<>(flown));
        flow = Collections.unmodifiableMap(new LinkedHashMap<>(flow));
    }
}
