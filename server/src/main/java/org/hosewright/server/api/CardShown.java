package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;

/** One line of a card as the papers page shows it: each rounded figure with what it really gives, or why it is refused. */
final class CardShown {
    private final CardSet set;
    private final CardLine line;
    private final QuantityShown shown;

    CardShown(CardSet set, CardLine line) {
        this.set = set;
        this.line = line;
        this.shown = QuantityShown.of(set.kit().units());
    }

    ObjectNode json() {
        ObjectNode json = Answer.object().put("id", line.hosePackage().id());
        json.put("line", PackageWords.of(set.kit(), line.hosePackage()));
        json.put("hose", line.hose()).put("nozzle", line.nozzle());
        json.put("gauge", line.gauge()).put("evidence", line.evidence());
        line.mostGauge().ifPresent(most -> json.put("mostGauge", shown.text(most)));
        json.put("floorAdder", shown.text(line.floorAdder())).put("floorHeight", shown.text(line.floorHeight()));
        json.put("safe", shown.text(line.longestSafe())).put("stoppedBy", line.stoppedBy());
        ArrayNode entries = json.putArray("entries");
        line.entries().forEach(entry -> entries.add(entry(entry)));
        line.cautions().forEach(json.putArray("cautions")::add);
        return json;
    }

    private ObjectNode entry(CardEntry entry) {
        LineState state = entry.check().state();
        ObjectNode json = Answer.object().put("length", shown.text(entry.length()));
        json.put("sections", entry.sections()).put("tested", entry.tested()).put("stands", entry.stands());
        json.put("figure", shown.text(entry.gauge()));
        json.put("flow", shown.text(state.flow())).put("tip", shown.text(state.tip()));
        json.put("reaction", shown.text(state.reaction()));
        entry.refusal().forEach(json.putArray("refusal")::add);
        ArrayNode checks = json.putArray("checks");
        entry.check()
                .checks()
                .forEach(check -> checks.addObject()
                        .put("what", check.what())
                        .put("passed", check.passed())
                        .put("says", check.says()));
        entry.check().notChecked().forEach(json.putArray("notChecked")::add);
        return json;
    }
}
