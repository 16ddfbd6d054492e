package org.hosewright.ledger.years;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.pool.Pool;
import org.hosewright.evidence.pool.PoolNight;
import org.hosewright.evidence.pool.PoolPriors;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.NightEngines;
import org.hosewright.ledger.line.NightGear;

/** All test nights weighed together, with the gear as the kit has it now. */
public final class YearsAnalysis {
    private final Kit kit;

    private YearsAnalysis(Kit kit) {
        this.kit = kit;
    }

    /** What nights together say.
     *
     * @param nights in any order; may be empty
     * @throws org.hosewright.hydraulics.error.InvalidInput a reading is impossible
     */
    public static YearsReport of(Kit kit, List<NightFlown> nights) {
        return new YearsAnalysis(kit).report(nights);
    }

    private YearsReport report(List<NightFlown> nights) {
        List<NightFlown> ordered =
                nights.stream().sorted(Comparator.comparing(NightFlown::date)).toList();
        HoseGroups groups = new HoseGroups(kit, flown(ordered));
        Pool pool = Pool.of(
                groups.listTypes(),
                groups.listBatches(),
                ordered.stream().map(this::heard).toList());
        List<String> assumed = new ArrayList<>(groups.listAssumed());
        assumed.addAll(believed());
        return new YearsReport(kit, ordered, pool, assumed);
    }

    private static Set<String> flown(List<NightFlown> nights) {
        Set<String> flown = new LinkedHashSet<>();
        nights.stream()
                .flatMap(night -> night.readings().stream())
                .flatMap(reading -> reading.laid().hose().stream())
                .map(Stretch::hose)
                .forEach(flown::add);
        return flown;
    }

    private PoolNight heard(NightFlown flown) {
        NightEngines engines = NightEngines.of(flown.readings());
        Night night = new Night(
                flown.readings(), NightGear.of(kit, Optional.of(flown.date()), engines), flown.rulings(), kit.units());
        return PoolNight.of(flown.id(), flown.year(), night, eras(flown, engines));
    }

    private Map<String, String> eras(NightFlown night, NightEngines engines) {
        Map<String, String> eras = new LinkedHashMap<>();
        kit.instruments().forEach((id, record) -> eras.put(id, era(id, record, night.date())));
        for (var reading : night.readings()) {
            String discharge = reading.laid().discharge();
            engines.find(kit, discharge)
                    .ifPresent(found -> eras.put(
                            discharge, discharge + " of " + found.engine().id()));
        }
        return eras;
    }

    private static String era(String id, InstrumentRecord record, LocalDate date) {
        return record.calibrated()
                .map(day -> id + (date.isBefore(day) ? " before " : " since ") + YearsWords.day(day))
                .orElse(id);
    }

    private static List<String> believed() {
        return List.of(
                "Beforehand a type of hose is believed to lose what its book, maker or estimate says, within 35 %; batches of a type to differ by "
                        + YearsWords.percent(PoolPriors.BATCHES)
                        + ", the same hose from night to night by "
                        + YearsWords.percent(PoolPriors.NIGHTS)
                        + ", and a type to change by "
                        + YearsWords.percent(PoolPriors.DRIFT)
                        + " a year. The nights outweigh this as they come.",
                "A gauge and a meter keep their error from one calibration to the next; a nozzle and a discharge's piping keep theirs for good. A change of theirs would look like a change of the hose.",
                "Gear is taken as the kit has it now.");
    }
}
