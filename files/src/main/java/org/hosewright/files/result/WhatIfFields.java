package org.hosewright.files.result;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.lay.LayWhatIf;
import org.hosewright.ledger.lay.PanelReading;

/** The fields of what a change does to a lay: each gauge and each tip before and then. */
record WhatIfFields(LayWhatIf found, UnitSystem units) {

    Map<String, Object> map() {
        Fields fields = new Fields(units).put("says", found.whatIf().says());
        return fields.putAll("gauges", gauges())
                .putAll(
                        "tips",
                        found.whatIf().before().tips().stream().map(this::tip).toList())
                .putAll(
                        "broken",
                        found.broken().stream()
                                .map(limit -> new Fields(units)
                                        .put("what", limit.what())
                                        .put("kind", limit.kind().word())
                                        .put("at", limit.at())
                                        .put("limit", limit.limit())
                                        .map())
                                .toList())
                .put("radio", found.radio())
                .put("cautions", found.cautions())
                .map();
    }

    private List<Map<String, Object>> gauges() {
        return IntStream.range(0, Math.min(found.now().size(), found.then().size()))
                .mapToObj(i -> new Fields(units)
                        .put("gauge", found.now().get(i).gauge())
                        .put("now", reading(found.now().get(i)))
                        .put("then", reading(found.then().get(i)))
                        .map())
                .toList();
    }

    private Map<String, Object> reading(PanelReading one) {
        Fields fields = new Fields(units).put("pressure", one.pressure());
        one.flow().ifPresent(flow -> fields.put("flow", flow));
        return fields.map();
    }

    private Map<String, Object> tip(AtTip before) {
        String id = before.outlet().id();
        Fields fields = new Fields(units).put("id", id).put("now", at(before));
        found.whatIf().then().tips().stream()
                .filter(tip -> tip.outlet().id().equals(id))
                .findFirst()
                .ifPresent(tip -> fields.put("then", at(tip)));
        return fields.map();
    }

    private Map<String, Object> at(AtTip tip) {
        return new Fields(units)
                .put("shut", tip.outlet().shut())
                .put("pressure", tip.state().tip())
                .put("flow", tip.state().flow())
                .put("reaction", tip.state().reaction())
                .map();
    }
}
