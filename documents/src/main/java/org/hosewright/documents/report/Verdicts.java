package org.hosewright.documents.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.press.Html;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.NeededRow;
import org.hosewright.ledger.drill.RuleRow;
import org.hosewright.ledger.drill.TestedLine;
import org.hosewright.ledger.kit.RuleOfThumb;
import org.hosewright.ledger.line.KitLines;

/** The night in the language of the nozzle: what the present rule gives where it gives least, and what is needed. */
final class Verdicts {
    private final DrillReport report;
    private final Figures figures;

    private Verdicts(DrillReport report, Figures figures) {
        this.report = report;
        this.figures = figures;
    }

    static Html html(DrillReport report, Figures figures) {
        List<Html> sentences = new ArrayList<>();
        for (TestedLine line : report.lines()) {
            new Verdicts(report, figures).find(line).ifPresent(sentences::add);
        }
        return Html.all(sentences);
    }

    private Optional<Html> find(TestedLine line) {
        Optional<NeededRow> longest =
                report.needed().stream().filter(row -> row.line().equals(line)).reduce((one, other) -> other);
        return longest.map(needed -> Html.tag(
                        "p",
                        report.rule().stream()
                                .filter(row ->
                                        row.line().equals(line) && row.length().equals(needed.length()))
                                .findFirst()
                                .map(this::rule)
                                .orElse(Html.NOTHING),
                        Html.text("Needed at " + figures.text(needed.length()) + ", level: "),
                        Html.tag("strong", figures.band(needed.pump())),
                        Html.text(" for the tip's " + figures.text(tip(line).at()) + "."))
                .in("answer"));
    }

    private Html rule(RuleRow row) {
        Flow wanted = tip(row.line()).flowAt();
        return Html.all(
                Html.text(
                        "The present rule" + report.kit().rule().map(this::says).orElse("") + ", gives "),
                Html.tag("strong", figures.text(row.flow().value()) + " where " + figures.text(wanted) + " is meant"),
                Html.text(" at " + figures.text(row.length()) + ", " + figures.text(row.tip()) + " at the tip and "
                        + figures.text(row.reaction()) + ". "));
    }

    private String says(RuleOfThumb rule) {
        return ", " + figures.text(rule.tip()) + " and " + figures.text(rule.loss()) + " per "
                + figures.text(rule.over());
    }

    private Tip tip(TestedLine line) {
        return KitLines.get(report.night().gear().nozzles(), line.nozzle(), "nozzle")
                .rated(line.setting());
    }
}
