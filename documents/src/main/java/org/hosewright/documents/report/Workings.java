package org.hosewright.documents.report;

import java.util.List;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.hydraulics.working.Step;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.drill.DrillReport;

/** The hand calculation of each headline number, as one would do it on paper. */
final class Workings {
    private Workings() {}

    static Html html(DrillReport report) {
        return Html.all(report.workings().stream().map(Workings::one).toList());
    }

    private static Html one(Working working) {
        Table table = new Table().words("step").words("worked").figures("result");
        working.steps().forEach(step -> table.row("", cells(step)));
        return Html.tag("div", Html.tag("h3", working.title()), table.html()).in("working");
    }

    private static List<Html> cells(Step step) {
        Html says = step.source().isEmpty()
                ? Html.text(step.says())
                : Html.all(
                        Html.text(step.says() + " "),
                        Html.tag("span", "(" + step.source() + ")").in("source"));
        String worked = step.formula().isEmpty() || step.numbers().isEmpty()
                ? step.formula() + step.numbers()
                : step.formula() + " = " + step.numbers();
        return List.of(says, Html.text(worked), Html.tag("strong", step.result()));
    }
}
