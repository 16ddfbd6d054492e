package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.lay.FieldMethods;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.hydraulics.lay.Surge;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.profile.Sheet;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.lay.PanelReading;
import org.hosewright.ledger.picture.LayPicture;

/** A lay solved, in the words of its page. */
final class LayShown {
    /** A method that is off by less is off by nothing that anybody reads [psi]. */
    private static final double NOTHING_PSI = 0.05;

    private final LayReport report;
    private final Map<String, String> names;
    private final QuantityShown shown;

    /** @param names of the tips by the way to each */
    LayShown(LayReport report, Map<String, String> names) {
        this.report = report;
        this.names = names;
        this.shown = QuantityShown.of(report.kit().units());
    }

    /** The whole answer, with the profile of one tip: the asked one, else the first that is open. */
    ObjectNode json(Optional<String> asked, Sheet sheet) {
        ObjectNode json = Answer.object();
        putWarnings(json);
        json.set("pump", pump());
        ArrayNode tips = json.putArray("tips");
        report.state().tips().forEach(tip -> tips.add(tip(tip)));
        json.set("gates", gates());
        json.set("panel", panel());
        json.set("hoses", hoses());
        ArrayNode limits = json.putArray("limits");
        report.limits().forEach(limit -> limits.add(limit(limit)));
        json.set("workings", DrillShown.workings(report.workings()));
        ArrayNode methods = json.putArray("methods");
        report.methods().forEach(one -> methods.add(method(one)));
        report.cautions().forEach(json.putArray("cautions")::add);
        report.assumed().forEach(json.putArray("assumed")::add);
        ObjectNode paths = json.putObject("paths");
        names.forEach(paths::put);
        findTip(asked).ifPresent(tip -> json.set("profile", profile(tip, sheet)));
        json.set("result", Answer.parse(ResultJson.lay(report)));
        return json;
    }

    /** What stands before the numbers. */
    private void putWarnings(ObjectNode json) {
        report.radio().forEach(json.putArray("radio")::add);
        ArrayNode broken = json.putArray("broken");
        report.limits().stream()
                .filter(Limit::broken)
                .map(limit -> breaks(limit, shown))
                .forEach(broken::add);
        report.outside().forEach(json.putArray("outside")::add);
        report.secondSays().forEach(json.putArray("second")::add);
    }

    private ArrayNode gates() {
        ArrayNode gates = Answer.array();
        report.state()
                .gates()
                .forEach(gate -> gates.addObject()
                        .put("discharge", gate.discharge())
                        .put("down", shown.text(gate.down()))
                        .put("says", "Gate " + gate.discharge() + " down by " + shown.text(gate.down()) + "."));
        return gates;
    }

    private ArrayNode panel() {
        ArrayNode panel = Answer.array();
        for (PanelReading one : report.panel()) {
            ObjectNode json = panel.addObject().put("gauge", one.gauge()).put("pressure", shown.text(one.pressure()));
            one.flow().ifPresent(flow -> json.put("flow", shown.text(flow)));
        }
        return panel;
    }

    /** How fast the water runs in each hose, and the estimate of what shutting at once may add. */
    private ObjectNode hoses() {
        ObjectNode json = Answer.object().put("wave", shown.velocity(Surge.WAVE_MS));
        ArrayNode list = json.putArray("list");
        for (Piece piece : report.state().listHose()) {
            piece.surge()
                    .ifPresent(surge -> list.addObject()
                            .put("to", piece.place())
                            .put("hose", piece.what())
                            .put("flow", shown.text(piece.flow()))
                            .put("velocity", shown.velocity(surge.velocity_ms()))
                            .put("stop", shown.text(surge.rise())));
        }
        return json;
    }

    private ObjectNode pump() {
        ObjectNode json = Answer.object().put("pressure", shown.withBand(report.pump()));
        json.put("flow", shown.text(report.state().flow()));
        report.intake().ifPresent(intake -> json.put("intake", shown.text(intake)));
        return json;
    }

    private ObjectNode tip(AtTip tip) {
        ObjectNode json = Answer.object().put("id", tip.outlet().id());
        json.put("shut", tip.outlet().shut())
                .put("pressure", shown.text(tip.state().tip()));
        json.put("flow", shown.withBand(report.flowOf(tip)));
        return json.put("reaction", shown.text(tip.state().reaction()));
    }

    private ObjectNode limit(Limit limit) {
        ObjectNode json = Answer.object()
                .put("what", limit.what())
                .put("kind", limit.kind().word());
        json.put("at", shown.text(limit.at())).put("limit", shown.text(limit.limit()));
        json.put("used", Math.round(100 * limit.used())).put("broken", limit.broken());
        return json.put("rule", limit.rule(shown.units()));
    }

    private ObjectNode method(FieldMethods one) {
        ObjectNode json =
                Answer.object().put("tip", one.tip()).put("method", one.method().word());
        one.pump().ifPresent(pump -> json.put("pump", shown.text(pump)));
        one.off().ifPresent(off -> json.put("off", off(off)));
        return json.put("note", one.note()).put("refused", one.refused());
    }

    private String off(Pressure off) {
        String text = shown.text(off);
        boolean none = Math.abs(off.psi()) < NOTHING_PSI;
        return none ? "nothing" : off.pascals() > 0 ? "+" + text : text;
    }

    static String breaks(Limit limit, QuantityShown shown) {
        return limit.what() + ": " + shown.text(limit.at()) + ", above " + shown.text(limit.limit()) + " ("
                + limit.rule(shown.units()) + ").";
    }

    private Optional<AtTip> findTip(Optional<String> asked) {
        return report.state().open().stream()
                .filter(tip -> asked.isEmpty() || tip.outlet().id().equals(asked.get()))
                .findFirst()
                .or(() -> report.state().open().stream().findFirst());
    }

    private ObjectNode profile(AtTip tip, Sheet sheet) {
        ObjectNode json = Answer.object().put("tip", tip.outlet().id());
        json.put(
                "says",
                "Line profile from the pump at " + shown.text(tip.state().pump()) + " to "
                        + tip.outlet().id() + ", " + shown.text(tip.state().flow()) + " at "
                        + shown.text(tip.state().tip()) + ".");
        json.set("drawing", DrawingJson.of(LayPicture.of(report, tip).draw(sheet)));
        return json;
    }
}
