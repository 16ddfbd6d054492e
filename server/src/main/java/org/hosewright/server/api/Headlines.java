package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.Optional;
import org.hosewright.evidence.calibration.Terms;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.TestedLine;
import org.hosewright.ledger.line.KitLines;

/** The numbers that a night is about, each with how well it is known and where it comes from. */
final class Headlines {
    private final DrillReport report;
    private final Terms terms;
    private final QuantityShown shown;
    private final ArrayNode json = Answer.array();

    Headlines(DrillReport report) {
        this.report = report;
        this.terms = report.calibration().terms();
        this.shown = QuantityShown.of(report.kit().units());
    }

    ArrayNode json() {
        terms.hoses()
                .forEach((id, loss) -> line(id, true)
                        .ifPresent(line -> add(
                                id,
                                "hose loss of " + id,
                                shown.hoseLossAt(loss, wanted(line)),
                                "tested to " + shown.text(line.longest()))));
        terms.discharges()
                .forEach((id, loss) -> line(id, false)
                        .ifPresent(line -> add(id, "piping of " + id, shown.pointLossAt(loss, wanted(line)), "")));
        terms.meters()
                .forEach((id, factor) ->
                        add(id, id + " reads " + side(factor, "high", "low"), shown.change(factor), ""));
        terms.nozzles()
                .forEach((id, factor) -> add(
                        id, id + " flows " + side(factor, "more", "less") + " than rated", shown.change(factor), ""));
        report.calibration()
                .residual()
                .ifPresent(scatter ->
                        add("scatter", "scatter of the readings about these numbers", shown.text(scatter.value()), ""));
        return json;
    }

    private void add(String id, String what, String text, String note) {
        String working = report.workings().stream()
                .map(Working::title)
                .filter(title -> title.contains(" of " + id) || title.contains(", " + id))
                .findFirst()
                .orElse("");
        json.addObject().put("what", what).put("text", text).put("note", note).put("working", working);
    }

    private static String side(Known<Ratio> factor, String above, String below) {
        return factor.value().value() >= 1 ? above : below;
    }

    /** The first line flown with a hose, or from a discharge. */
    private Optional<TestedLine> line(String id, boolean hose) {
        return report.lines().stream()
                .filter(line ->
                        hose ? line.hoses().contains(id) : line.discharge().equals(id))
                .findFirst();
    }

    /** The flow that a line's nozzle is meant for. */
    private Flow wanted(TestedLine line) {
        return KitLines.get(report.night().gear().nozzles(), line.nozzle(), "nozzle")
                .rated(line.setting())
                .flowAt();
    }
}
