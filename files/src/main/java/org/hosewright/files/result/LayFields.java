package org.hosewright.files.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.lay.FieldMethods;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.LayState.Gate;
import org.hosewright.hydraulics.lay.SecondLine;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.lay.PanelReading;

/** The fields of a lay's result; what a second line does stands before the numbers. */
final class LayFields {
    private final LayReport report;
    private final UnitSystem units;

    LayFields(LayReport report) {
        this.report = report;
        this.units = report.kit().units();
    }

    Map<String, Object> map() {
        Fields fields = putWarnings(new Fields(units).put("units", units.word()))
                .put("pump", pump())
                .putAll(
                        "tips",
                        report.state().open().stream()
                                .map(tip -> tip(tip, report.flowOf(tip)))
                                .toList())
                .put("shut", shut())
                .putAll("gates", report.state().gates().stream().map(this::gate).toList())
                .putAll("limits", report.limits().stream().map(this::limit).toList());
        return putPieces(fields)
                .putAll("panel", report.panel().stream().map(this::gauge).toList())
                .putAll("workings", DrillFields.workings(report.workings()))
                .putAll("methods", report.methods().stream().map(this::method).toList())
                .put("cautions", cautions())
                .put("assumed", report.assumed())
                .map();
    }

    /** What stands before the numbers. */
    private Fields putWarnings(Fields fields) {
        List<Map<String, Object>> broken =
                report.limits().stream().filter(Limit::broken).map(this::limit).toList();
        return fields.put("radio", report.radio())
                .putAll("broken", broken)
                .put("outside", report.outside())
                .putAll(
                        "secondLine",
                        report.secondLines().stream().map(this::second).toList());
    }

    private List<String> shut() {
        return report.state().tips().stream()
                .filter(tip -> tip.outlet().shut())
                .map(tip -> tip.outlet().id())
                .toList();
    }

    private Fields putPieces(Fields fields) {
        PieceFields pieces = new PieceFields(report.state(), units);
        return fields.putAll("pumps", pieces.pumps())
                .putAll("supply", pieces.supply())
                .putAll("pieces", pieces.pieces())
                .put("suddenStop", pieces.suddenStop())
                .putAll("reducers", pieces.reducers())
                .putAll("foam", pieces.foam())
                .putAll("bursts", pieces.bursts());
    }

    private Map<String, Object> pump() {
        Fields pump = new Fields(units)
                .put("pressure", report.pump())
                .put("flow", report.state().flow());
        report.intake().ifPresent(intake -> pump.put("intake", intake));
        return pump.map();
    }

    private Map<String, Object> gauge(PanelReading one) {
        Fields fields = new Fields(units).put("gauge", one.gauge()).put("pressure", one.pressure());
        one.flow().ifPresent(flow -> fields.put("flow", flow));
        return fields.map();
    }

    private List<String> cautions() {
        List<String> all = new ArrayList<>(report.radio());
        all.addAll(report.secondSays());
        all.addAll(report.outside());
        all.addAll(report.cautions());
        return all;
    }

    private Map<String, Object> second(SecondLine one) {
        return new Fields(units)
                .put("turned", one.turned())
                .put("opens", one.opens())
                .put("flow", one.lay().flow())
                .putAll(
                        "tips",
                        one.tips().stream()
                                .map(tip -> tip(tip, Known.of(tip.state().flow())))
                                .toList())
                .map();
    }

    private Map<String, Object> tip(AtTip tip, Known<Flow> flow) {
        return new Fields(units)
                .put("id", tip.outlet().id())
                .put("pressure", tip.state().tip())
                .put("flow", flow)
                .put("reaction", tip.state().reaction())
                .map();
    }

    private Map<String, Object> gate(Gate gate) {
        Fields fields = new Fields(units).put("discharge", gate.discharge()).put("gateDown", gate.down());
        Optional.ofNullable(report.state().parts().flows().get(gate.discharge()))
                .ifPresent(flow -> fields.put("flow", flow));
        return fields.map();
    }

    private Map<String, Object> method(FieldMethods one) {
        Fields fields = new Fields(units)
                .put("tip", one.tip())
                .put("method", one.method().word());
        one.pump().ifPresent(pump -> fields.put("pump", pump));
        one.off().ifPresent(off -> fields.put("off", off));
        return fields.putText("note", one.note())
                .putText("refused", one.refused())
                .map();
    }

    private Map<String, Object> limit(Limit limit) {
        return new Fields(units)
                .put("what", limit.what())
                .put("kind", limit.kind().word())
                .put("at", limit.at())
                .put("limit", limit.limit())
                .put("used", Fields.number(limit.used()))
                .put("broken", limit.broken())
                .map();
    }
}
