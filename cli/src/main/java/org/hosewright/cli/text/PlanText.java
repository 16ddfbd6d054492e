package org.hosewright.cli.text;

import java.util.List;
import org.hosewright.evidence.plan.Plan;
import org.hosewright.evidence.plan.TestPoint;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.plan.PlanReport;

/** A planned test night, in plain text. */
public final class PlanText {
    private PlanText() {}

    public static List<String> of(PlanReport report) {
        var shown = QuantityShown.of(report.kit().units());
        Plan plan = report.plan();
        var text = new Report();
        text.title(report.kit().company() + ", test night of "
                + report.hosePackage().id() + " on "
                + report.asked().date() + ": " + plan.points().size() + " readings, " + plan.layings() + " lays, "
                + shown.text(plan.time()) + ", " + shown.text(plan.water()) + " of water");
        text.table("The readings, in this order", points(report, shown));
        text.table("What it should tell", foreseen(plan, shown));
        text.list(
                "What it cannot tell",
                plan.withheld().stream()
                        .map(withheld ->
                                withheld.what() + ": " + withheld.why() + "; what would settle it: " + withheld.needs())
                        .toList());
        text.list("Know before flying it", plan.warnings());
        text.list("Out of reach", plan.stopped());
        text.list("Who does what", report.roles());
        text.list("Go or no go", report.goNoGo());
        text.list("Keep in mind", report.cautions());
        text.list("Assumed", report.assumed());
        return text.lines();
    }

    private static Columns foreseen(Plan plan, QuantityShown shown) {
        var foreseen = new Columns("what", "known afterwards, ± 95 %", "to the step that one orders in");
        plan.foreseen()
                .forEach(seen -> foreseen.add(
                        seen.what(),
                        seen.known().map(shown::withBand).orElse("cannot be told"),
                        seen.answered() ? "yes" : "no"));
        return foreseen;
    }

    private static Columns points(PlanReport report, QuantityShown shown) {
        var table = new Columns("reading", "length", "tip", "flow", "pump about", "never above", "reaction");
        int number = 0;
        for (TestPoint point : report.plan().points()) {
            number++;
            table.add(
                    String.valueOf(number),
                    shown.text(point.line().length()),
                    point.shut()
                            ? "nozzle shut, idle"
                            : shown.text(point.state().tip()),
                    point.shut() ? "none" : shown.text(point.state().flow()),
                    shown.text(point.atPumpGauge(report.plan().means())),
                    point.never().map(shown::text).orElse("not set"),
                    point.shut() ? "none" : shown.text(point.state().reaction()));
        }
        return table;
    }
}
