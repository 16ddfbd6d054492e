package org.hosewright.ledger.order;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.ledger.bed.RigBed;
import org.hosewright.ledger.kit.Kit;

/** What has gone stale in a set of ordered pressures: by package, each thing it rests on that is not as it was.
 *
 * @param reasons by id of the package, why its figures are stale, as sentences; packages that stand are not in it
 */
public record Staleness(Map<String, List<String>> reasons) {
    public Staleness {
        reasons = Map.copyOf(reasons);
    }

    /** The company as it stands.
     *
     * @param kit its kit
     * @param beds what lies on its rigs, as far as people looked
     * @param today the day that ages of tests and calibrations are taken at
     */
    public record Standing(Kit kit, List<RigBed> beds, LocalDate today) {
        public Standing {
            beds = List.copyOf(beds);
        }
    }

    /** Compares the kit that a set was worked out from with the kit as it stands and with what lies on the rigs.
     *
     * @param then the kit that the set rests on
     */
    public static Staleness of(OrderSet set, Kit then, Standing now) {
        Map<String, List<String>> reasons = new LinkedHashMap<>();
        var changed = new Changed(then, set.made(), now);
        for (OrderedLine line : set.lines()) {
            List<String> why = changed.reasons(line.hosePackage());
            if (!why.isEmpty()) {
                reasons.put(line.hosePackage(), why);
            }
        }
        return new Staleness(reasons);
    }

    public boolean isStale(String hosePackage) {
        return reasons.containsKey(hosePackage);
    }

    /** Why a package's figures are stale; empty where they stand. */
    public List<String> why(String hosePackage) {
        return reasons.getOrDefault(hosePackage, List.of());
    }

    /** How many figures of a set are stale. */
    public int count(OrderSet set) {
        return set.lines().stream()
                .filter(line -> isStale(line.hosePackage()))
                .mapToInt(line -> (int) line.pressures().stream()
                        .filter(OrderedPressure::stands)
                        .count())
                .sum();
    }

    /** The hoses of a chain, each once. */
    static Set<String> hoses(List<Stretch> chain) {
        Set<String> hoses = new LinkedHashSet<>();
        chain.forEach(part -> hoses.add(Objects.requireNonNull(part.hose())));
        return hoses;
    }
}
