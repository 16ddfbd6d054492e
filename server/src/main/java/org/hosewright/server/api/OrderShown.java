package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.order.RoundingWord;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.order.OrderChange;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** A set of ordered pressures as the orders page shows it: engine by engine, beside what was ordered before. */
final class OrderShown {
    private final OrderInFull looked;
    private final QuantityShown shown;
    private final List<OrderChange> changes;

    OrderShown(OrderInFull looked) {
        this.looked = looked;
        this.shown = QuantityShown.of(looked.set().units());
        this.changes = OrderChange.of(looked.before(), looked.set());
    }

    ObjectNode json() {
        OrderRevision revision = looked.revision();
        ObjectNode json = Answer.object().put("number", revision.number()).put("code", revision.code());
        json.put("standing", looked.standing().word()).put("kitVersion", revision.kitVersion());
        json.put("made", looked.set().made().toString());
        json.put("rounding", RoundingWord.of(looked.set().way()));
        json.put("first", looked.before().isEmpty());
        json.put("stale", looked.stale().count(looked.set()));
        json.set("proposed", RecordJson.mark(revision.mark()));
        revision.signature().ifPresent(step -> json.set("signed", RecordJson.mark(step.mark())));
        ArrayNode engines = json.putArray("engines");
        looked.set().engines().forEach(engine -> engines.add(engine(engine)));
        ArrayNode gone = json.putArray("gone");
        changes.stream()
                .filter(change -> change.is().isEmpty())
                .forEach(change -> gone.add(change.line().hosePackage() + ", " + shown.text(change.length())));
        return json;
    }

    private ObjectNode engine(String engine) {
        OrderRevision revision = looked.revision();
        ObjectNode json = Answer.object().put("id", engine);
        List<OrderChange> mine = changes.stream()
                .filter(change ->
                        change.line().engine().equals(engine) && change.is().isPresent())
                .toList();
        json.put("numbers", mine.size());
        json.put("changed", mine.stream().filter(OrderChange::changed).count());
        revision.fitted(engine).ifPresent(step -> json.set("fitted", RecordJson.mark(step.mark())));
        ArrayNode acknowledged = json.putArray("acknowledged");
        revision.of(OrderStep.Kind.ACKNOWLEDGED, engine)
                .forEach(step -> acknowledged.add(RecordJson.mark(step.mark())));
        ArrayNode reports = json.putArray("reports");
        revision.openReports(engine)
                .forEach(step -> reports.add(RecordJson.mark(step.mark()).put("note", step.note())));
        ArrayNode lines = json.putArray("lines");
        looked.set().linesOf(engine).forEach(line -> lines.add(line(line, mine)));
        return json;
    }

    private ObjectNode line(OrderedLine line, List<OrderChange> mine) {
        ObjectNode json = Answer.object().put("package", line.hosePackage()).put("discharge", line.discharge());
        json.put("gauge", line.gauge()).put("evidence", line.evidence());
        json.put("floorAdder", shown.text(line.floorAdder())).put("safe", shown.text(line.longestSafe()));
        line.mostGauge().ifPresent(most -> json.put("mostGauge", shown.text(most)));
        looked.stale().why(line.hosePackage()).forEach(json.putArray("stale")::add);
        ArrayNode boxes = json.putArray("boxes");
        mine.stream()
                .filter(change -> change.line().hosePackage().equals(line.hosePackage()))
                .forEach(change -> boxes.add(box(change)));
        return json;
    }

    private ObjectNode box(OrderChange change) {
        ObjectNode json = Answer.object().put("length", shown.text(change.length()));
        json.put("changed", change.changed());
        side(json, "was", change.was());
        side(json, "is", change.is());
        return json;
    }

    private void side(ObjectNode json, String key, Optional<OrderedPressure> side) {
        side.ifPresent(pressure -> {
            ObjectNode there = json.putObject(key).put("figure", shown.text(pressure.figure()));
            there.put("flow", shown.text(pressure.flow())).put("tip", shown.text(pressure.tip()));
            there.put("reaction", shown.text(pressure.reaction()));
            there.put("tested", pressure.tested()).put("stands", pressure.stands());
            pressure.refusal().forEach(there.putArray("refusal")::add);
        });
    }
}
