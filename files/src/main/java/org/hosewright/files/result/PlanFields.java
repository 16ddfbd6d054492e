package org.hosewright.files.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.calibration.Withheld;
import org.hosewright.evidence.plan.Foreseen;
import org.hosewright.evidence.plan.Plan;
import org.hosewright.evidence.plan.Question;
import org.hosewright.evidence.plan.TestPoint;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.plan.PlanReport;

/** The keys of a planned test night. */
final class PlanFields {
    private final PlanReport report;
    private final UnitSystem units;

    PlanFields(PlanReport report) {
        this.report = report;
        this.units = report.kit().units();
    }

    Map<String, Object> map() {
        Plan plan = report.plan();
        Fields fields = new Fields(units)
                .put("units", units.word())
                .put("package", report.hosePackage().id())
                .put("date", report.asked().date().toString())
                .put("questions", plan.questions().stream().map(Question::word).toList())
                .put("optimality", report.asked().optimality().word())
                .put("pumpGauges", plan.means().pumpGauges());
        plan.means().tipGauge().ifPresent(gauge -> fields.put("tipGauge", gauge));
        plan.means().meter().ifPresent(meter -> fields.put("meter", meter));
        return fields.putAll("points", points())
                .putAll("foreseen", plan.foreseen().stream().map(this::foreseen).toList())
                .putAll(
                        "withheld",
                        plan.withheld().stream().map(PlanFields::withheld).toList())
                .put("time", plan.time())
                .put("water", plan.water())
                .put("layings", plan.layings())
                .put("warnings", plan.warnings())
                .put("outOfReach", plan.stopped())
                .put("roles", report.roles())
                .put("goNoGo", report.goNoGo())
                .put("cautions", report.cautions())
                .put("assumed", report.assumed())
                .map();
    }

    private List<Map<String, Object>> points() {
        List<Map<String, Object>> points = new ArrayList<>();
        for (TestPoint point : report.plan().points()) {
            points.add(point(points.size() + 1, point));
        }
        return points;
    }

    private Map<String, Object> point(int number, TestPoint point) {
        Fields fields = new Fields(units)
                .put("reading", String.valueOf(number))
                .put("length", point.line().length())
                .put("rise", point.line().rise())
                .put("shut", point.shut())
                .put("pumpGauge", point.pumpGauge())
                .put("tip", point.state().tip())
                .put("flow", point.state().flow())
                .put("pump", point.atPumpGauge(report.plan().means()))
                .put("reaction", point.state().reaction());
        point.never().ifPresent(never -> fields.put("neverAbove", never));
        return fields.putAll("checks", point.limits().stream().map(this::check).toList())
                .map();
    }

    private Map<String, Object> check(Limit limit) {
        return new Fields(units)
                .put("what", limit.what())
                .put("kind", limit.kind().word())
                .put("at", limit.at())
                .put("limit", limit.limit())
                .put("used", Fields.number(limit.used()))
                .put("rule", limit.rule(units))
                .map();
    }

    private Map<String, Object> foreseen(Foreseen seen) {
        Fields fields = new Fields(units).put("what", seen.what());
        seen.question().ifPresent(question -> fields.put("question", question.word()));
        seen.known().ifPresent(known -> fields.put("expected", known));
        return fields.put("answered", seen.answered()).map();
    }

    private static Map<String, Object> withheld(Withheld withheld) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("what", withheld.what());
        fields.put("why", withheld.why());
        fields.put("needs", withheld.needs());
        return fields;
    }
}
