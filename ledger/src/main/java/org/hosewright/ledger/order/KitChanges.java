package org.hosewright.ledger.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;
import org.jspecify.annotations.Nullable;

/** What a package's pressures rest on in a kit, and which of it another kit says differently. */
final class KitChanges {
    private final Kit then;
    private final Kit now;
    private final List<String> reasons = new ArrayList<>();

    KitChanges(Kit then, Kit now) {
        this.then = then;
        this.now = now;
    }

    /** Each difference, as a sentence. */
    List<String> reasons(String id) {
        reasons.clear();
        HosePackage was = then.packages().get(id);
        HosePackage is = now.packages().get(id);
        if (was == null || is == null) {
            return List.of(id + " is no longer in the kit.");
        }
        compare("The package " + id, as(was), as(is));
        compare("What crew " + crew(was) + " can hold", force(then, was), force(now, was));
        compare("The reserve of hose", then.reserve(), now.reserve());
        Staleness.hoses(was.hose()).forEach(this::hose);
        compare("The nozzle " + was.nozzle(), nozzle(then, was), nozzle(now, was));
        engine(was);
        return List.copyOf(reasons);
    }

    private void hose(String id) {
        HoseRecord was = Objects.requireNonNull(then.hoses().get(id));
        HoseRecord is = now.hoses().get(id);
        compare("The hose " + id, water(was), water(is));
        if (is != null) {
            compare("What the loss of " + id + " rests on", was.basis(), is.basis());
            compare(
                    "The night behind " + id,
                    then.evidence().get(was.basis().night()),
                    now.evidence().get(was.basis().night()));
        }
    }

    private void engine(HosePackage was) {
        String id = was.engine();
        compare("The discharge " + was.discharge() + " of " + id, discharge(then, was), discharge(now, was));
        compare("The pump or ceiling of " + id, pump(then, id), pump(now, id));
        compare("The panel gauge of " + id, gauge(then, id), gauge(now, id));
    }

    private void compare(String what, @Nullable Object was, @Nullable Object is) {
        if (is == null && was != null) {
            reasons.add(what + " is no longer in the kit.");
        } else if (!Objects.equals(was, is)) {
            reasons.add(what + " changed.");
        }
    }

    /** A package without the figure that an earlier order left in the kit. */
    private static HosePackage as(HosePackage named) {
        return new HosePackage(
                named.id(),
                named.engine(),
                named.discharge(),
                named.hose(),
                named.nozzle(),
                named.setting(),
                named.crew(),
                named.target(),
                named.least(),
                Optional.empty());
    }

    private static String crew(HosePackage named) {
        return named.crew().isPresent() ? "of " + named.crew().getAsInt() : "";
    }

    private static Optional<Object> force(Kit kit, HosePackage named) {
        return named.crew().isPresent()
                ? Optional.ofNullable(kit.crewReaction().get(named.crew().getAsInt()))
                : Optional.empty();
    }

    private static @Nullable Hose water(@Nullable HoseRecord record) {
        return record == null ? null : record.hose();
    }

    private static @Nullable Nozzle nozzle(Kit kit, HosePackage named) {
        var record = kit.nozzles().get(named.nozzle());
        return record == null ? null : record.nozzle();
    }

    private static @Nullable Discharge discharge(Kit kit, HosePackage named) {
        EngineRecord record = kit.engines().get(named.engine());
        return record == null ? null : record.engine().discharges().get(named.discharge());
    }

    private static Optional<List<Object>> pump(Kit kit, String id) {
        return of(
                kit.engines(),
                id,
                record -> List.of(record.engine().rated(), record.engine().ceiling()));
    }

    /** The gauge's place and offset: its accuracy and the day it was calibrated change no figure. */
    private static Optional<List<Object>> gauge(Kit kit, String id) {
        Optional<String> name = of(kit.engines(), id, EngineRecord::gauge).flatMap(gauge -> gauge);
        return name.flatMap(gauge -> of(
                kit.instruments(),
                gauge,
                record -> List.of(
                        gauge, place(record), record.offset().map(Known::value).orElse(new Pressure(0)))));
    }

    private static Object place(InstrumentRecord record) {
        return record.instrument() instanceof Instrument.PressureGauge pressure ? pressure.tap() : Optional.empty();
    }

    private static <T, R> Optional<R> of(Map<String, T> all, String id, Function<T, R> read) {
        return Optional.ofNullable(all.get(id)).map(read);
    }
}
