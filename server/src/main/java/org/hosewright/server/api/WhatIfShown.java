package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.lay.LayWhatIf;
import org.hosewright.ledger.lay.PanelReading;

/** What a change does to a lay, as the page shows it: limits that it breaks first, then gauges and tips, now and then. */
final class WhatIfShown {
    private final LayWhatIf found;
    private final QuantityShown shown;

    WhatIfShown(LayWhatIf found, UnitSystem units) {
        this.found = found;
        this.shown = QuantityShown.of(units);
    }

    ObjectNode json() {
        ObjectNode json = Answer.object().put("says", found.whatIf().says());
        found.radio().forEach(json.putArray("radio")::add);
        ArrayNode broken = json.putArray("broken");
        found.broken().stream().map(limit -> LayShown.breaks(limit, shown)).forEach(broken::add);
        ArrayNode gauges = json.putArray("gauges");
        for (int i = 0; i < found.now().size(); i++) {
            gauges.addObject()
                    .put("gauge", found.now().get(i).gauge())
                    .put("now", reading(found.now().get(i)))
                    .put("then", reading(found.then().get(i)));
        }
        ArrayNode tips = json.putArray("tips");
        found.whatIf().before().tips().forEach(tip -> tips.add(tip(tip)));
        found.cautions().forEach(json.putArray("cautions")::add);
        return json;
    }

    private String reading(PanelReading one) {
        return shown.text(one.pressure())
                + one.flow().map(flow -> ", " + shown.text(flow)).orElse("");
    }

    private ObjectNode tip(AtTip now) {
        String id = now.outlet().id();
        ObjectNode json = Answer.object().put("id", id).put("now", at(now));
        Optional<AtTip> then = found.whatIf().then().tips().stream()
                .filter(tip -> tip.outlet().id().equals(id))
                .findFirst();
        return json.put("then", then.map(this::at).orElse(""));
    }

    private String at(AtTip tip) {
        return tip.outlet().shut()
                ? "shut"
                : shown.text(tip.state().flow()) + ", " + shown.text(tip.state().tip()) + ", reaction "
                        + shown.text(tip.state().reaction());
    }
}
