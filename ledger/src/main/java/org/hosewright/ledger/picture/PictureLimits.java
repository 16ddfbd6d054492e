package org.hosewright.ledger.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.profile.LimitBand;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;

/** The pressures not to be passed along a line: the company's ceiling, and each hose's where that is lower. */
public final class PictureLimits {
    private PictureLimits() {}

    static List<LimitBand> of(Kit kit, String discharge, List<Stretch> hose) {
        Optional<Pressure> ceiling = kit.engines().values().stream()
                .map(EngineRecord::engine)
                .filter(engine -> engine.discharges().containsKey(discharge))
                .findFirst()
                .flatMap(engine -> engine.ceiling());
        return of(kit, ceiling, hose);
    }

    public static List<LimitBand> of(Kit kit, Optional<Pressure> ceiling, List<Stretch> hose) {
        QuantityShown shown = QuantityShown.of(kit.units());
        List<LimitBand> limits = new ArrayList<>();
        double most_Pa = ceiling.map(Pressure::pascals).orElse(Double.POSITIVE_INFINITY);
        double from_m = 0;
        for (Stretch part : hose) {
            Length from = new Length(from_m);
            Length to = new Length(from_m + part.length().metres());
            Optional.ofNullable(kit.hoses().get(part.hose()))
                    .map(HoseRecord::hose)
                    .flatMap(one -> one.limit())
                    .filter(limit -> limit.pascals() < most_Pa)
                    .ifPresent(
                            limit -> limits.add(new LimitBand(limit, from, to, part.hose() + " " + shown.text(limit))));
            from_m = to.metres();
        }
        Length whole = new Length(from_m);
        ceiling.ifPresent(
                pressure -> limits.add(LimitBand.along(pressure, whole, "company ceiling " + shown.text(pressure))));
        return limits;
    }
}
