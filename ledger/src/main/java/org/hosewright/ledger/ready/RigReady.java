package org.hosewright.ledger.ready;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitLines;

/** What the pressures of one rig's packages rest on, and what of it is due for test, on one day.
 *
 * @param grounds each hose and each discharge's piping once
 * @param due each hose's service test, each package's flow test and the panel gauge's calibration
 */
public record RigReady(List<Ground> grounds, List<Due> due) {
    /** How long a package's flow test is good. @source NFPA 1962 (2013), as summarized: yearly */
    private static final int FLOW_TEST_MONTHS = 12;

    public RigReady {
        grounds = List.copyOf(grounds);
        due = List.copyOf(due);
    }

    /** The rig as a kit has it. */
    public static RigReady of(Kit kit, String engine, LocalDate today) {
        Set<String> hoses = new LinkedHashSet<>();
        Set<String> discharges = new LinkedHashSet<>();
        List<HosePackage> packages = kit.packages().values().stream()
                .filter(named -> named.engine().equals(engine))
                .toList();
        for (HosePackage named : packages) {
            named.hose().forEach(part -> hoses.add(part.hose()));
            discharges.add(named.discharge());
        }
        EngineRecord record = KitLines.get(kit.engines(), engine, "engine");
        List<Ground> grounds = new ArrayList<>();
        List<Due> due = new ArrayList<>();
        for (String id : hoses) {
            HoseRecord hose = KitLines.get(kit.hoses(), id, "hose");
            grounds.add(ground(kit, "loss of " + id, hose.basis()));
            due.add(due(id, hose, today));
        }
        discharges.forEach(id -> grounds.add(piping(kit, record, id)));
        packages.forEach(named -> due.add(flowTest(kit, named, today)));
        due.add(gauge(kit, record, today));
        return new RigReady(grounds, due);
    }

    private static Ground piping(Kit kit, EngineRecord record, String id) {
        String what = "piping of " + id;
        Optional<Discharge> discharge =
                Optional.ofNullable(record.engine().discharges().get(id));
        if (discharge.flatMap(Discharge::loss).isEmpty()) {
            return Ground.unverified(what, "not known, counted as none");
        }
        return Optional.ofNullable(record.pipingBasis().get(id))
                .map(basis -> ground(kit, what, basis))
                .orElseGet(() -> Ground.unverified(what, "entered by hand, from where is not known"));
    }

    private static Ground ground(Kit kit, String what, Basis basis) {
        return switch (basis.kind()) {
            case TEST -> {
                Optional<NightRecord> night = Optional.ofNullable(kit.evidence().get(basis.night()));
                yield Ground.ofNight(what, basis.night(), night.flatMap(NightRecord::date));
            }
            case ESTIMATE -> Ground.unverified(what, "not measured, from an estimate");
            case BOOK, MAKER ->
                Ground.unverified(what, "not measured, from the " + basis.kind().word());
        };
    }

    private static Due due(String id, HoseRecord hose, LocalDate today) {
        String what = "service test of " + id;
        if (KitBounds.age(hose, Optional.of(today)) == TestAge.TOO_OLD) {
            return new Due(what, hose.tested(), Optional.empty(), Due.State.OUT_OF_SERVICE);
        }
        return Due.of(what, hose.tested(), hose.testedUntil(), today);
    }

    /** A package was flown as a whole on the oldest of the nights that its hoses' losses rest on. */
    private static Due flowTest(Kit kit, HosePackage named, LocalDate today) {
        List<Optional<LocalDate>> nights = named.hose().stream()
                .map(part -> KitLines.get(kit.hoses(), part.hose(), "hose").basis())
                .map(basis ->
                        Optional.ofNullable(kit.evidence().get(basis.night())).flatMap(NightRecord::date))
                .toList();
        Optional<LocalDate> oldest = nights.stream().allMatch(Optional::isPresent)
                ? nights.stream().flatMap(Optional::stream).min(LocalDate::compareTo)
                : Optional.empty();
        return Due.of("flow test of " + named.id(), oldest, oldest.map(day -> day.plusMonths(FLOW_TEST_MONTHS)), today);
    }

    private static Due gauge(Kit kit, EngineRecord record, LocalDate today) {
        Optional<String> name = record.gauge();
        Optional<InstrumentRecord> gauge = name.map(id -> KitLines.get(kit.instruments(), id, "panel gauge"));
        String what = "calibration of " + name.orElse("the panel gauge, which the kit does not name");
        return Due.of(
                what,
                gauge.flatMap(InstrumentRecord::calibrated),
                gauge.flatMap(InstrumentRecord::calibratedUntil),
                today);
    }
}
