package org.hosewright.ledger.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;

/** What a package's pressures rest on and that ran out since they were worked out: hose tests, gauge calibrations. */
final class Expired {
    private final Kit kit;
    private final LocalDate made;
    private final LocalDate today;

    Expired(Kit kit, LocalDate made, LocalDate today) {
        this.kit = kit;
        this.made = made;
        this.today = today;
    }

    /** Each thing that was in date when the pressures were worked out and is not today, as a sentence. */
    List<String> reasons(String id) {
        HosePackage named = kit.packages().get(id);
        if (named == null) {
            return List.of();
        }
        List<String> reasons = new ArrayList<>();
        for (String hose : Staleness.hoses(named.hose())) {
            if (age(hose, made) == TestAge.IN_DATE && age(hose, today) != TestAge.IN_DATE) {
                reasons.add("The last service test of " + hose + " is over 12 months old.");
            }
        }
        gauge(named)
                .filter(this::ranOut)
                .ifPresent(gauge ->
                        reasons.add("The calibration of " + gauge.instrument().id() + " is over 12 months old."));
        return reasons;
    }

    private TestAge age(String hose, LocalDate day) {
        var record = kit.hoses().get(hose);
        return record == null ? TestAge.UNDATED : KitBounds.age(record, Optional.of(day));
    }

    private Optional<InstrumentRecord> gauge(HosePackage named) {
        return Optional.ofNullable(kit.engines().get(named.engine()))
                .flatMap(EngineRecord::gauge)
                .flatMap(id -> Optional.ofNullable(kit.instruments().get(id)));
    }

    private boolean ranOut(InstrumentRecord gauge) {
        return gauge.calibratedUntil()
                .filter(until -> !until.isBefore(made) && until.isBefore(today))
                .isPresent();
    }
}
