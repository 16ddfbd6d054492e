package org.hosewright.ledger.years;

import java.util.List;
import org.hosewright.evidence.pool.Pool;
import org.hosewright.ledger.kit.Kit;

/** What all nights together say.
 *
 * @param kit the kit as it stands
 * @param nights the nights, the earliest first
 * @param pool the numbers
 * @param assumed what they rest on, as sentences
 */
public record YearsReport(Kit kit, List<NightFlown> nights, Pool pool, List<String> assumed) {
    public YearsReport {
        nights = List.copyOf(nights);
        assumed = List.copyOf(assumed);
    }

    /** The night that a part of the result speaks of. */
    public NightFlown night(String id) {
        return nights.stream()
                .filter(night -> night.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
