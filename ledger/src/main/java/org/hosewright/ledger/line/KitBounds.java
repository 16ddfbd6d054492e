package org.hosewright.ledger.line;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;

/** What a kit sets for a line: ceiling, capacity, crew, flows, and the age of the hose's tests. */
public final class KitBounds {
    /** Hose made before July of this year is out of service; a year alone counts as before. @source NFPA 1962, 2013/2018 */
    private static final int LAST_OLD_YEAR = 1987;

    private KitBounds() {}

    /** The bounds of a package.
     *
     * @param today the day that test ages are taken at; absent where they are not judged
     */
    public static Bounds of(Kit kit, HosePackage named, Optional<LocalDate> today) {
        Bounds engine = Bounds.of(KitLines.get(kit.engines(), named.engine(), "engine of package " + named.id())
                .engine());
        return engine.withCrew(crew(kit, named))
                .withFlows(named.target(), named.least())
                .withHoseTests(ages(kit, named, today));
    }

    private static Optional<Crew> crew(Kit kit, HosePackage named) {
        if (named.crew().isEmpty()) {
            return Optional.empty();
        }
        int people = named.crew().getAsInt();
        Optional<Force> figure = Optional.ofNullable(kit.crewReaction().get(people));
        return figure.map(force -> new Crew(people, force));
    }

    private static Map<String, TestAge> ages(Kit kit, HosePackage named, Optional<LocalDate> today) {
        Map<String, TestAge> ages = new LinkedHashMap<>();
        for (Stretch part : named.hose()) {
            ages.put(part.hose(), age(KitLines.get(kit.hoses(), part.hose(), "hose"), today));
        }
        return ages;
    }

    /** The age of a hose's service test on a day. */
    public static TestAge age(HoseRecord record, Optional<LocalDate> today) {
        if (record.made().isPresent() && record.made().getAsInt() <= LAST_OLD_YEAR) {
            return TestAge.TOO_OLD;
        }
        if (record.testedUntil().isEmpty() || today.isEmpty()) {
            return TestAge.UNDATED;
        }
        boolean fresh = !record.testedUntil().get().isBefore(today.get());
        return fresh ? TestAge.IN_DATE : TestAge.OVERDUE;
    }
}
