package org.hosewright.ledger.card;

import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.order.PumpGauge;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;

/** The gauge that a card's pressures are read on.
 *
 * @param name its id; empty where the kit names none
 * @param sight where it taps and how far it is off
 */
public record PanelGauge(String name, PumpGauge sight) {

    /** The panel gauge of an engine; where none is named, one before the piping that reads true. */
    public static PanelGauge of(Kit kit, EngineRecord engine) {
        Optional<InstrumentRecord> record =
                engine.gauge().map(id -> kit.instruments().get(id));
        if (record.isEmpty() || !(record.get().instrument() instanceof Instrument.PressureGauge gauge)) {
            return new PanelGauge("", PumpGauge.TRUE);
        }
        boolean behind =
                gauge.tap().filter(tap -> tap instanceof Tap.AtDischarge).isPresent();
        Pressure offset = record.get().offset().map(Known::value).orElse(new Pressure(0));
        return new PanelGauge(gauge.id(), new PumpGauge(behind, offset));
    }

    /** The gauge in words, as a card names it. */
    String says(QuantityShown shown) {
        String where = sight.atDischarge()
                ? "at the discharge, behind its piping"
                : "on the panel, before the discharge piping";
        if (name.isEmpty()) {
            return "a gauge " + where + ", reading true";
        }
        Pressure offset = sight.offset();
        String off = offset.pascals() == 0
                ? ""
                : "; it reads " + shown.text(new Pressure(Math.abs(offset.pascals())))
                        + (offset.pascals() > 0 ? " high" : " low") + " and this is allowed for";
        return name + ", " + where + off;
    }
}
