package org.hosewright.files.result;

import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.lay.LayReport;

/** The fields of a lay's result. */
final class LayFields {
    private LayFields() {}

    static Map<String, Object> map(LayReport report) {
        UnitSystem units = report.kit().units();
        Fields pump = new Fields(units).put("pressure", report.pump()).put("flow", report.flow());
        report.intake().ifPresent(intake -> pump.put("intake", intake));
        Map<String, Object> tip = new Fields(units)
                .put("id", report.lay().laid().id())
                .put("pressure", report.state().tip())
                .put("flow", report.flow())
                .put("reaction", report.state().reaction())
                .map();
        return new Fields(units)
                .put("units", units.word())
                .put("pump", pump.map())
                .putAll("tips", List.of(tip))
                .putAll("gates", List.of())
                .putAll(
                        "limits",
                        report.limits().stream()
                                .map(limit -> limit(limit, units))
                                .toList())
                .putAll("workings", DrillFields.workings(report.workings()))
                .put("cautions", report.cautions())
                .put("assumed", report.assumed())
                .map();
    }

    static Map<String, Object> limit(Limit limit, UnitSystem units) {
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
