package org.hosewright.ledger.card;

import java.util.Optional;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.InstrumentRecord;
import org.hosewright.ledger.kit.Kit;

/** The gauge that a card's pressures are read on: where it taps and how far it is off.
 *
 * @param name its id; empty where the kit names none
 * @param atDischarge true for a gauge behind the discharge piping
 * @param offset what it reads less what is true
 */
record PanelGauge(String name, boolean atDischarge, Pressure offset) {

    /** The panel gauge of an engine; where none is named, one before the piping that reads true. */
    static PanelGauge of(Kit kit, EngineRecord engine) {
        Optional<InstrumentRecord> record =
                engine.gauge().map(id -> kit.instruments().get(id));
        if (record.isEmpty() || !(record.get().instrument() instanceof Instrument.PressureGauge gauge)) {
            return new PanelGauge("", false, new Pressure(0));
        }
        boolean behind =
                gauge.tap().filter(tap -> tap instanceof Tap.AtDischarge).isPresent();
        Pressure offset = record.get().offset().map(Known::value).orElse(new Pressure(0));
        return new PanelGauge(gauge.id(), behind, offset);
    }

    /** What it shows while a line flows. */
    Pressure reads(LineState state) {
        Pressure seen = atDischarge ? state.atDischargeGauge() : state.pump();
        return new Pressure(seen.pascals() + offset.pascals());
    }

    /** The pump pressure, before the piping, at which it shows a figure on a line; below 0 there is none. */
    Pressure pump(Line line, Pressure figure) {
        Pressure seen = new Pressure(figure.pascals() - offset.pascals());
        if (!atDischarge || seen.pascals() <= 0) {
            return seen;
        }
        Discharge bare =
                new Discharge(line.discharge().id(), Optional.<Length>empty(), Optional.of(Known.of(PointLoss.NONE)));
        LineState behind = LineSolver.atPump(new Line(bare, line.runs(), line.nozzle(), line.setting()), seen);
        Pressure piping = line.discharge().lossOrNone().at(behind.flow());
        return new Pressure(seen.pascals() + piping.pascals());
    }

    /** The gauge in words, as a card names it. */
    String says(QuantityShown shown) {
        String where =
                atDischarge ? "at the discharge, behind its piping" : "on the panel, before the discharge piping";
        if (name.isEmpty()) {
            return "a gauge " + where + ", reading true";
        }
        String off = offset.pascals() == 0
                ? ""
                : "; it reads " + shown.text(new Pressure(Math.abs(offset.pascals())))
                        + (offset.pascals() > 0 ? " high" : " low") + " and this is allowed for";
        return name + ", " + where + off;
    }
}
