package org.hosewright.files.readings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.night.ReadWith;
import org.hosewright.evidence.night.Shown;
import org.hosewright.files.term.Names;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Kit;

/** The instruments that a row names: known to the kit, of the right sort, and able to show what was read. */
final class Instruments {
    private final Cells cells;
    private final Kit kit;

    Instruments(Cells cells, Kit kit) {
        this.cells = cells;
        this.kit = kit;
    }

    ReadWith with(Shown shown) {
        Optional<String> pump = named(Column.PUMP_GAUGE, "a gauge at the pump", Instruments::readsPump);
        Optional<String> tip = named(Column.TIP_GAUGE, "a gauge at the tip", Instruments::readsTip);
        Optional<String> meter =
                named(Column.METER, "a flow meter", instrument -> instrument instanceof Instrument.FlowMeter);
        pump.ifPresent(id -> refuseBeyond(id, shown.pump(), Column.PUMP));
        tip.ifPresent(id -> shown.tip().ifPresent(read -> refuseBeyond(id, read, Column.TIP)));
        return new ReadWith(pump, tip, meter);
    }

    private Optional<String> named(Column column, String what, Predicate<Instrument> fits) {
        Optional<String> id = cells.find(column);
        id.ifPresent(name -> {
            List<String> names = kit.instruments().entrySet().stream()
                    .filter(entry -> fits.test(entry.getValue().instrument()))
                    .map(Map.Entry::getKey)
                    .toList();
            if (!names.contains(name)) {
                throw cells.refused(column, what, Names.known(name, names));
            }
        });
        return id;
    }

    private static boolean readsPump(Instrument instrument) {
        return instrument instanceof Instrument.PressureGauge gauge
                && gauge.tap()
                        .map(tap -> tap instanceof Tap.BeforePiping || tap instanceof Tap.AtDischarge)
                        .orElse(true);
    }

    private static boolean readsTip(Instrument instrument) {
        return instrument instanceof Instrument.PressureGauge gauge
                && gauge.tap()
                        .map(tap -> tap instanceof Tap.Pitot || tap instanceof Tap.Side)
                        .orElse(true);
    }

    private void refuseBeyond(String id, Pressure read, Column column) {
        var record = kit.instruments().get(id);
        if (record != null && record.instrument() instanceof Instrument.PressureGauge gauge) {
            gauge.range().ifPresent(range -> {
                if (read.pascals() > range.pascals() * (1 + 1e-9)) {
                    String most = QuantityShown.of(kit.units()).text(range);
                    throw cells.refused(column, "a reading of " + id, "at most its full scale, " + most);
                }
            });
        }
    }
}
