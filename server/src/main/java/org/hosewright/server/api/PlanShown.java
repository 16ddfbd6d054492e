package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.hosewright.evidence.plan.Foreseen;
import org.hosewright.evidence.plan.Plan;
import org.hosewright.evidence.plan.Question;
import org.hosewright.evidence.plan.TestPoint;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.plan.PlanReport;

/** A planned test night in the words of its page. */
final class PlanShown {
    private final PlanReport report;
    private final Plan plan;
    private final QuantityShown shown;

    PlanShown(PlanReport report) {
        this.report = report;
        this.plan = report.plan();
        this.shown = QuantityShown.of(report.kit().units());
    }

    ObjectNode json() {
        ObjectNode json = Answer.object().put("package", report.hosePackage().id());
        json.put("date", report.asked().date().toString());
        json.put("readings", InWords.readings(plan.points().size())).put("layings", plan.layings());
        json.put("time", shown.text(plan.time())).put("water", shown.text(plan.water()));
        plan.questions().stream().map(Question::word).forEach(json.putArray("questions")::add);
        readWith(json);
        points(json.putArray("points"));
        ArrayNode foreseen = json.putArray("foreseen");
        plan.foreseen().forEach(seen -> foreseen.add(foreseen(seen)));
        ArrayNode withheld = json.putArray("withheld");
        plan.withheld().forEach(item -> withheld.add(DrillShown.withheld(item)));
        plan.warnings().forEach(json.putArray("warnings")::add);
        plan.stopped().forEach(json.putArray("outOfReach")::add);
        report.roles().forEach(json.putArray("roles")::add);
        report.goNoGo().forEach(json.putArray("goNoGo")::add);
        report.cautions().forEach(json.putArray("cautions")::add);
        report.assumed().forEach(json.putArray("assumed")::add);
        return json;
    }

    private void readWith(ObjectNode json) {
        ArrayNode with = json.putArray("with");
        plan.means().pumpGauges().forEach(with::add);
        plan.means().tipGauge().ifPresent(with::add);
        plan.means().meter().ifPresent(with::add);
    }

    private void points(ArrayNode points) {
        int before = -1;
        for (TestPoint point : plan.points()) {
            ObjectNode json = point(point).put("reading", String.valueOf(points.size() + 1));
            points.add(json.put("laid", point.lay() != before));
            before = point.lay();
        }
    }

    private ObjectNode point(TestPoint point) {
        ObjectNode json = Answer.object().put("length", shown.text(point.line().length()));
        json.put("rise", shown.rise(point.line().rise())).put("shut", point.shut());
        json.put("pumpGauge", point.pumpGauge());
        json.put("pump", shown.text(point.atPumpGauge(plan.means())));
        point.never().ifPresent(never -> json.put("never", shown.text(never)));
        if (!point.shut()) {
            json.put("tip", shown.text(point.state().tip()));
            json.put("flow", shown.text(point.state().flow()));
            json.put("reaction", shown.text(point.state().reaction()));
        }
        ArrayNode checks = json.putArray("checks");
        point.limits().forEach(limit -> checks.add(check(limit)));
        return json;
    }

    private ObjectNode check(Limit limit) {
        ObjectNode json = Answer.object().put("what", limit.what());
        json.put("at", shown.text(limit.at())).put("limit", shown.text(limit.limit()));
        return json.put("used", Math.round(100 * limit.used())).put("rule", limit.rule(shown.units()));
    }

    private ObjectNode foreseen(Foreseen seen) {
        ObjectNode json = Answer.object().put("what", seen.what()).put("answered", seen.answered());
        seen.question().ifPresent(question -> json.put("question", question.word()));
        seen.known().ifPresent(known -> json.put("known", shown.withBand(known)));
        return json;
    }
}
