package org.hosewright.ledger.line;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.night.Gear;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;

/** The kit as a night's analysis sees it. */
public final class NightGear {
    private NightGear() {}

    /** The gear of a kit.
     *
     * <p>A bore counts as gauged for the night when its day is the night's or the one before or after it (nights cross
     * midnight), or when the night has no date. Of discharges that several engines name alike, the one is
     * taken that the night flew.
     *
     * @param date the night's date, where known
     * @param engines whose discharges it flew
     */
    public static Gear of(Kit kit, Optional<LocalDate> date, NightEngines engines) {
        return of(kit, date, engines, hose -> false);
    }

    /** The same for a night that the kit may have taken over already.
     *
     * @param own true for a hose whose number in the kit is this night's own: it says nothing beforehand, so it counts as no more
     *     than a book's
     */
    public static Gear of(Kit kit, Optional<LocalDate> date, NightEngines engines, Predicate<HoseRecord> own) {
        Map<String, Hose> hoses = new LinkedHashMap<>();
        Set<String> book = new LinkedHashSet<>();
        kit.hoses().forEach((id, record) -> {
            hoses.put(id, record.hose());
            if (record.basis().kind() != Basis.Kind.TEST || own.test(record)) {
                book.add(id);
            }
        });
        Map<String, Discharge> discharges = new LinkedHashMap<>();
        kit.engines().values().stream()
                .flatMap(record -> record.engine().discharges().keySet().stream())
                .distinct()
                .forEach(id -> engines.find(kit, id)
                        .ifPresent(record -> discharges.put(id, record.engine().getDischarge(id))));
        Map<String, Nozzle> nozzles = new LinkedHashMap<>();
        Set<String> gauged = new LinkedHashSet<>();
        kit.nozzles().forEach((id, record) -> {
            nozzles.put(id, record.nozzle());
            if (record.gauged().isPresent() && sameNight(record.gauged().get(), date)) {
                gauged.add(id);
            }
        });
        Map<String, Instrument> instruments = new LinkedHashMap<>();
        kit.instruments().forEach((id, record) -> instruments.put(id, record.instrument()));
        return new Gear(hoses, book, discharges, nozzles, gauged, instruments);
    }

    private static boolean sameNight(LocalDate gauged, Optional<LocalDate> date) {
        return date.isEmpty()
                || (!gauged.isBefore(date.get().minusDays(1))
                        && !gauged.isAfter(date.get().plusDays(1)));
    }
}
