package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.trial.Standing;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.trial.KeptTrial;
import org.hosewright.ledger.trial.Opened;
import org.hosewright.ledger.trial.Taken;
import org.hosewright.ledger.trial.TrialKey;
import org.hosewright.ledger.trial.TrialPlan;
import org.hosewright.ledger.trial.TrialReading;
import org.hosewright.ledger.trial.TrialReport;
import org.hosewright.ledger.trial.TrialTask;

/** A blind trial as JSON: kinds beside labels only once it is open. */
final class TrialShown {
    private final TrialReport report;
    private final KeptTrial trial;
    private final QuantityShown shown;
    private final Map<String, String> kinds;

    TrialShown(TrialReport report) {
        this.report = report;
        this.trial = report.trial();
        this.shown = QuantityShown.of(report.units());
        this.kinds = trial.opened().map(Opened::kinds).orElse(Map.of());
    }

    ObjectNode json() {
        ObjectNode json = Answer.object();
        json.set("plan", plan(trial.plan()));
        json.put("answer", report.answer()).put("read", trial.laid()).put("complete", trial.isRead());
        report.pairs().forEach(json.putArray("pairs")::add);
        report.remarks().forEach(json.putArray("remarks")::add);
        json.set("order", order(trial, kinds));
        ArrayNode readings = json.putArray("readings");
        for (int i = 0; i < trial.readings().size(); i++) {
            readings.add(reading(trial.readings().get(i)).put("number", i + 1));
        }
        ArrayNode standings = json.putArray("standings");
        report.result().ifPresent(result -> result.standings().forEach(standing -> standings.add(standing(standing))));
        ArrayNode seen = json.putArray("shown");
        trial.shown()
                .forEach(once -> seen.addObject()
                        .put("who", once.who())
                        .put("at", once.at().toString()));
        trial.opened().ifPresent(open -> json.set("opened", opened(open)));
        return json;
    }

    /** The key, for the one who lays: kind by label, and re-lay by re-lay. */
    static ObjectNode key(TrialKey key, KeptTrial trial) {
        ObjectNode json = Answer.object();
        ArrayNode labels = json.putArray("key");
        key.kinds()
                .forEach((label, kind) -> labels.addObject().put("label", label).put("kind", kind));
        json.set("order", order(trial, key.kinds()));
        return json;
    }

    private ObjectNode plan(TrialPlan plan) {
        TrialTask task = plan.task();
        ObjectNode json = Answer.object().put("name", plan.name());
        plan.kinds().forEach(json.putArray("kinds")::add);
        plan.holders().forEach(json.putArray("holders")::add);
        json.put("measure", task.measure().word()).put("held", shown.text(task.held()));
        json.put("over", shown.text(task.over())).put("longest", shown.text(task.longest()));
        json.put("matters", shown.text(task.matters())).put("scatter", shown.text(task.scatter()));
        json.put("step", shown.text(task.step())).put("relays", plan.relays());
        return json.put("find", shown.text(task.find()));
    }

    private static ArrayNode order(KeptTrial trial, Map<String, String> kinds) {
        ArrayNode order = Answer.array();
        List<String> labels = trial.order();
        for (int i = 0; i < labels.size(); i++) {
            ObjectNode lay = order.addObject().put("lay", i + 1).put("label", labels.get(i));
            if (kinds.containsKey(labels.get(i))) {
                lay.put("kind", kinds.get(labels.get(i)));
            }
        }
        return order;
    }

    private ObjectNode reading(TrialReading reading) {
        ObjectNode json = Answer.object().put("lay", reading.lay());
        if (reading.taken() instanceof Taken.Drop drop) {
            json.put("pump", shown.text(drop.pump())).put("tip", shown.text(drop.tip()));
        }
        json.put("value", shown.text(reading.taken().value()));
        json.put("who", reading.who()).put("at", reading.at().toString()).put("late", reading.late());
        reading.aside()
                .ifPresent(
                        aside -> json.putObject("aside").put("who", aside.who()).put("why", aside.why()));
        return json;
    }

    private ObjectNode standing(Standing standing) {
        ObjectNode json = Answer.object().put("label", standing.label());
        json.put("name", kinds.getOrDefault(standing.label(), standing.label()));
        json.put("relays", standing.relays()).put("mean", mean(standing));
        standing.scatter().ifPresent(scatter -> json.put("scatter", text(scatter)));
        return json;
    }

    private static ObjectNode opened(Opened open) {
        return Answer.object()
                .put("who", open.who())
                .put("at", open.at().toString())
                .put("why", open.why());
    }

    private String mean(Standing standing) {
        if (standing.half().isEmpty()) {
            return text(standing.mean());
        }
        double deviation = standing.half().getAsDouble() / QuantityShown.HALF_WIDTH;
        return shown.withBand(Known.of(quantity(standing.mean()), quantity(deviation)));
    }

    private String text(double si) {
        return shown.text(quantity(si));
    }

    private Quantity quantity(double si) {
        return trial.plan().task().measure().quantity(si);
    }
}
