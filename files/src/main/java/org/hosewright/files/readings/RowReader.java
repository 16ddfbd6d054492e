package org.hosewright.files.readings;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Shown;
import org.hosewright.files.kit.Chain;
import org.hosewright.files.term.Names;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.kit.Kit;

/** The reader of one row of readings. */
final class RowReader {
    private static final String SHUT = "shut";
    private static final int LONGEST_NAME = 40;
    private static final String NOT_SHUT = "a flow above 0, nothing where it was not read, or 'shut' under setting";

    private final Cells cells;
    private final Kit kit;

    RowReader(Cells cells, Kit kit) {
        this.cells = cells;
        this.kit = kit;
    }

    Reading reading() {
        String id = cells.get(Column.READING, "a name for the reading, such as 1");
        if (id.length() > LONGEST_NAME) {
            throw cells.refused(Column.READING, "a reading's name", "at most " + LONGEST_NAME + " characters");
        }
        Laid laid = laid();
        Shown shown = shown(laid);
        refuseTime();
        return new Reading(id, laid, shown, new Instruments(cells, kit).with(shown), doubt());
    }

    private Laid laid() {
        String discharge = cells.get(Column.DISCHARGE, Names.known("", Outlets.names(kit)));
        Optional<String> engine = Outlets.findEngine(discharge, cells, kit);
        List<Stretch> hose = hose();
        Nozzle nozzle = nozzle();
        String setting = cells.find(Column.SETTING).orElse("");
        boolean shut = setting.equals(SHUT);
        return new Laid(
                engine,
                discharge,
                hose,
                cells.length(Column.RISE),
                nozzle.id(),
                shut ? Nozzle.ONLY : setting(nozzle, setting),
                shut,
                cells.find(Column.LAY).orElse(""));
    }

    private List<Stretch> hose() {
        String text = cells.get(Column.HOSE, Names.known("", kit.hoses().keySet()));
        Optional<Length> length = cells.length(Column.LENGTH);
        boolean chain = text.indexOf('+') >= 0 || text.indexOf(' ') >= 0;
        if (!chain) {
            var hose = cells.read(Column.HOSE, text, id -> Chain.getHose(id, kit.hoses()));
            Length one = length.orElseThrow(() -> cells.refused(
                    Column.LENGTH, "length", "a length above 0, or a chain under hose, as in '8 x " + text + "'"));
            return List.of(new Stretch(text, cells.read(Column.LENGTH, cells.get(Column.LENGTH, ""), written -> {
                double most_m = Chain.MOST_SECTIONS * hose.section().metres();
                if (one.metres() <= 0 || one.metres() > most_m) {
                    String allowed = "a length above 0, of at most " + Chain.MOST_SECTIONS + " sections";
                    throw new InvalidInput("length", written, allowed, "");
                }
                return Chain.checked(one, hose, written);
            })));
        }
        List<Stretch> stretches = cells.read(Column.HOSE, text, all -> Chain.parse(all, kit.hoses()));
        length.ifPresent(stated -> refuseOtherLength(stated, stretches));
        return stretches;
    }

    private void refuseOtherLength(Length stated, List<Stretch> chain) {
        double sum_m =
                chain.stream().mapToDouble(part -> part.length().metres()).sum();
        if (Math.abs(sum_m - stated.metres()) > 0.01) {
            throw cells.refused(Column.LENGTH, "length", "the length of the chain under hose, or nothing");
        }
    }

    private Nozzle nozzle() {
        String allowed = Names.known("", kit.nozzles().keySet());
        String id = cells.get(Column.NOZZLE, allowed);
        var record = kit.nozzles().get(id);
        if (record == null) {
            throw cells.refused(
                    Column.NOZZLE, "nozzle", Names.known(id, kit.nozzles().keySet()));
        }
        return record.nozzle();
    }

    private String setting(Nozzle nozzle, String setting) {
        if (!nozzle.hasSettings()) {
            if (!setting.isEmpty()) {
                throw cells.refused(
                        Column.SETTING, "setting", "nothing, or 'shut': " + nozzle.id() + " has one setting");
            }
            return Nozzle.ONLY;
        }
        if (!nozzle.settings().containsKey(setting)) {
            String names = String.join(", ", nozzle.settings().keySet());
            throw cells.refused(Column.SETTING, "setting", names + ", or 'shut'");
        }
        return setting;
    }

    private Shown shown(Laid laid) {
        Optional<Pressure> pump = cells.pressure(Column.PUMP);
        Optional<Pressure> tip = cells.pressure(Column.TIP);
        Optional<Flow> flow = flow(laid.shut());
        if (!laid.shut() && tip.isPresent() && tip.get().pascals() <= 0) {
            throw cells.refused(Column.TIP, "tip pressure of an open nozzle", "above 0, or 'shut' under setting");
        }
        if (tip.isEmpty() && flow.isEmpty()) {
            throw cells.refused(Column.TIP, "tip pressure or flow", "at least one of the two");
        }
        Pressure read =
                pump.orElseThrow(() -> cells.refused(Column.PUMP, "pump pressure", "what the pump gauge showed"));
        return new Shown(read, tip, flow, mid(laid), cells.pressure(Column.INTAKE));
    }

    private Optional<Flow> flow(boolean shut) {
        Optional<Flow> flow = cells.flow();
        if (flow.isEmpty()) {
            return flow;
        }
        boolean none = flow.get().cubicMetresPerSecond() <= 0;
        if (none && !shut) {
            throw cells.refused(Column.FLOW, "flow of a nozzle not marked shut", NOT_SHUT);
        }
        if (!none && shut) {
            throw cells.refused(Column.FLOW, "flow of a shut nozzle", "0 or nothing");
        }
        return flow;
    }

    private Optional<Shown.Mid> mid(Laid laid) {
        Optional<Pressure> pressure = cells.pressure(Column.MID);
        Optional<Length> at = cells.length(Column.MID_AT);
        if (pressure.isEmpty() && at.isEmpty()) {
            return Optional.empty();
        }
        if (pressure.isEmpty()) {
            throw cells.refused(Column.MID, "pressure of the in-line gauge", "what it showed, or nothing under mid at");
        }
        String allowed = "hose length from the discharge to the in-line gauge, more than 0 and less than the line";
        Length place = at.orElseThrow(() -> cells.refused(Column.MID_AT, "place of the in-line gauge", allowed));
        if (place.metres() <= 0 || place.metres() >= laid.length().metres()) {
            throw cells.refused(Column.MID_AT, "place of the in-line gauge", allowed);
        }
        return Optional.of(new Shown.Mid(pressure.get(), place));
    }

    private boolean doubt() {
        String doubt = cells.find(Column.DOUBT).orElse("no");
        if (!doubt.equals("yes") && !doubt.equals("no")) {
            throw cells.refused(Column.DOUBT, "doubt", "yes, no or nothing");
        }
        return doubt.equals("yes");
    }

    private void refuseTime() {
        cells.find(Column.TIME).ifPresent(text -> {
            if (!isTime(text)) {
                throw cells.refused(Column.TIME, "time", "ISO 8601, as in 2026-05-12T19:40 or 19:40");
            }
        });
    }

    private static boolean isTime(String text) {
        for (java.util.function.Consumer<String> form : List.<java.util.function.Consumer<String>>of(
                OffsetDateTime::parse, LocalDateTime::parse, LocalTime::parse)) {
            try {
                form.accept(text);
                return true;
            } catch (DateTimeParseException notThisForm) {
                // The next form may be it.
            }
        }
        return false;
    }
}
