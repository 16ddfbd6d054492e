package org.hosewright.documents.night;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.evidence.plan.TestPoint;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.ledger.plan.PlanReport;

/** What everybody on the night is told, and what the plan rests on.
 *
 * @param report the plan
 * @param figures numbers as they stand on paper
 */
record Briefing(PlanReport report, Figures figures) {
    /** So many limits of each reading are printed, the most used first [1]. */
    private static final int LIMITS = 2;

    private static final Html BLANK = Html.tag("span", "\u00a0");

    /** Sentences with a box to tick before each. */
    static Html ticked(List<String> sentences) {
        Table table = new Table().words("done").words("what");
        sentences.forEach(sentence -> table.row("fill tick", List.of(BLANK, Html.text(sentence))));
        return table.html();
    }

    /** Roles with room for a name. */
    static Html named(List<String> roles) {
        Table table = new Table().words("name").words("does what");
        roles.forEach(role -> table.row("fill name", List.of(BLANK, Html.text(role))));
        return table.html();
    }

    Html foreseen() {
        Table table =
                new Table().words("what").figures("known afterwards, ± 95 %").words("to the step that one orders in");
        report.plan()
                .foreseen()
                .forEach(seen -> table.row(
                        seen.what(),
                        seen.known().map(figures::band).orElse("cannot be told"),
                        seen.answered() ? "yes" : "no"));
        return table.html();
    }

    Html untold() {
        List<Html> pieces = new ArrayList<>();
        report.plan()
                .withheld()
                .forEach(missing -> pieces.add(Html.tag(
                        "p",
                        Html.tag("strong", Figures.sentence(missing.what()) + ". "),
                        Html.text(missing.why() + "; what would settle it: " + missing.needs() + "."))));
        return Html.all(pieces);
    }

    /** Where each reading stands against the limits that it uses most. */
    Html checks() {
        Table table = new Table()
                .words("reading")
                .words("limit")
                .figures("there")
                .figures("most")
                .words("by");
        int number = 0;
        for (TestPoint point : report.plan().points()) {
            number++;
            String name = String.valueOf(number);
            for (Limit limit : point.limits().stream().limit(LIMITS).toList()) {
                table.row(
                        name,
                        limit.what(),
                        figures.text(limit.at()),
                        figures.text(limit.limit()),
                        limit.rule(figures.units()));
                name = "";
            }
        }
        return table.html();
    }
}
