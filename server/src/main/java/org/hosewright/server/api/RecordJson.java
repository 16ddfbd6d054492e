package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.DrillSummary;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.Mark;
import org.hosewright.ledger.kit.KitRevision;

/** The company's record as JSON. */
final class RecordJson {
    private RecordJson() {}

    static ObjectNode drill(DrillRecord drill) {
        ObjectNode json = Answer.object();
        json.put("id", drill.id()).put("version", drill.version());
        json.put("name", drill.name()).put("date", drill.date().toString());
        drill.columns().forEach(json.putArray("columns")::add);
        ArrayNode rows = json.putArray("rows");
        drill.rows().forEach(row -> rows.add(row(drill, row)));
        drill.findAcceptance().ifPresent(last -> {
            ObjectNode accepted = mark(json.putObject("accepted"), last.mark());
            accepted.put("kitVersion", last.kitVersion()).put("changedSince", drill.changedSinceAccepted());
        });
        return json;
    }

    private static ObjectNode row(DrillRecord drill, DrillRow row) {
        ObjectNode json = Answer.object();
        json.put("id", row.id()).put("version", row.version()).put("removed", row.removed());
        cells(json.putObject("cells"), row.cells());
        drill.findRuling(row.id())
                .ifPresent(ruling -> mark(json.putObject("ruling"), ruling.mark())
                        .put("verdict", ruling.verdict().word())
                        .put("reason", ruling.reason()));
        return json;
    }

    static ObjectNode summary(DrillSummary drill) {
        ObjectNode json = Answer.object();
        json.put("id", drill.id()).put("version", drill.version()).put("name", drill.name());
        json.put("date", drill.date().toString()).put("rows", drill.rows());
        drill.acceptedInto().ifPresent(version -> json.put("acceptedInto", version));
        return json;
    }

    static ObjectNode kit(KitRevision kit) {
        ObjectNode json = mark(Answer.object(), kit.mark());
        return json.put("version", kit.version()).put("text", kit.text());
    }

    static ObjectNode entry(Entry entry) {
        ObjectNode json = mark(Answer.object(), entry.mark());
        json.put("number", entry.mark().entry()).put("what", entry.what());
        json.put("subject", entry.subject().word()).put("subjectId", entry.subjectId());
        json.put("hat", entry.hat()).put("hash", entry.hash());
        return json.put("version", entry.version());
    }

    /** Who, when and why. */
    static ObjectNode mark(Mark mark) {
        return mark(Answer.object(), mark);
    }

    private static ObjectNode mark(ObjectNode json, Mark mark) {
        return json.put("at", mark.at().toString()).put("who", mark.who()).put("why", mark.why());
    }

    private static void cells(ObjectNode json, Map<String, String> cells) {
        cells.forEach(json::put);
    }
}
