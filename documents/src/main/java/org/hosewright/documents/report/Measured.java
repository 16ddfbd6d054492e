package org.hosewright.documents.report;

import java.util.List;
import java.util.Optional;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.evidence.calibration.Terms;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.TestedLine;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.line.KitLines;

/** The numbers that the night determines, how well each is known, and what it rests on. */
final class Measured {
    private final DrillReport report;
    private final Figures figures;
    private final String source;
    private final Table table =
            new Table().words("what").figures("value ± 95 %").words("rests on");

    private Measured(DrillReport report, Figures figures) {
        this.report = report;
        this.figures = figures;
        long used =
                report.calibration().readings().stream().filter(r -> r.used()).count();
        this.source = "this night, " + InWords.readings(used) + " fitted together";
    }

    static Html html(DrillReport report, Figures figures) {
        return new Measured(report, figures).html();
    }

    private Html html() {
        Terms terms = report.calibration().terms();
        losses(terms);
        factors(terms);
        report.calibration()
                .residual()
                .ifPresent(
                        scatter -> row("scatter of pump pressure", figures.band(scatter), "what the fit leaves over"));
        return table.isEmpty() ? Html.NOTHING : table.html();
    }

    private void losses(Terms terms) {
        terms.hoses()
                .forEach((id, loss) -> row(
                        "loss of " + id,
                        figures.band(loss),
                        flow(id).map(q -> figures.shown().hoseLossAt(loss, q)).orElse("")));
        terms.discharges()
                .forEach((id, loss) -> row(
                        "piping of " + Figures.name(id),
                        figures.band(loss),
                        flowOf(id)
                                .map(q -> figures.shown().pointLossAt(loss, q))
                                .orElse("")));
    }

    private void factors(Terms terms) {
        terms.nozzles()
                .forEach((id, factor) ->
                        row("flow of " + Figures.name(id), figures.shown().change(factor), "against its rating"));
        terms.meters()
                .forEach((id, factor) ->
                        row(Figures.name(id) + " reads", figures.shown().change(factor), "against the true flow"));
        terms.gauges()
                .forEach((id, offset) ->
                        row(Figures.name(id) + " reads", figures.band(offset), "above the true pressure"));
    }

    private void row(String what, String value, String inUse) {
        table.row(
                "",
                List.of(
                        Html.text(what),
                        Html.all(Html.tag("strong", value), Html.tag("div", inUse)),
                        Html.text(source)));
    }

    /** The flow that the nozzle of the first line with a hose is meant for. */
    private Optional<Flow> flow(String hose) {
        return report.lines().stream()
                .filter(line -> line.hoses().contains(hose))
                .findFirst()
                .map(this::meant);
    }

    private Optional<Flow> flowOf(String discharge) {
        return report.lines().stream()
                .filter(line -> line.discharge().equals(discharge))
                .findFirst()
                .map(this::meant);
    }

    private Flow meant(TestedLine line) {
        return KitLines.get(report.night().gear().nozzles(), line.nozzle(), "nozzle")
                .rated(line.setting())
                .flowAt();
    }
}
