package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Collectors;
import org.hosewright.evidence.calibration.FindingKind;
import org.hosewright.evidence.calibration.Judged;
import org.hosewright.evidence.calibration.Withheld;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.NeededRow;
import org.hosewright.ledger.drill.RuleRow;
import org.hosewright.ledger.drill.TestedLine;

/** A night's report as the drill page shows it: every number as a person reads it. */
final class DrillShown {
    private final DrillReport report;
    private final QuantityShown shown;

    private DrillShown(DrillReport report) {
        this.report = report;
        this.shown = QuantityShown.of(report.kit().units());
    }

    static ObjectNode of(DrillReport report) {
        return new DrillShown(report).json();
    }

    private ObjectNode json() {
        ObjectNode json = Answer.object();
        json.put("readings", report.calibration().readings().size());
        json.put(
                "used",
                report.calibration().readings().stream().filter(Judged::used).count());
        json.put("about", about());
        ArrayNode lines = json.putArray("lines");
        report.lines().forEach(line -> lines.add(line(line)));
        json.set("headlines", new Headlines(report).json());
        json.set("verdict", new Verdict(report).json());
        ObjectNode judged = json.putObject("judged");
        report.calibration().readings().forEach(reading -> judged.set(reading.reading(), judged(reading)));
        rows(json.putArray("rule"), report.rule());
        rows(json.putArray("book"), report.book());
        ArrayNode needed = json.putArray("needed");
        report.needed().forEach(row -> needed.add(needed(row)));
        ArrayNode swings = json.putArray("swings");
        report.steadiness().swings().forEach(swing -> swings.add(swing.says()));
        ArrayNode withheld = json.putArray("withheld");
        report.calibration().withheld().forEach(item -> withheld.add(withheld(item)));
        advice(json);
        json.set("workings", workings(report.workings()));
        report.cautions().forEach(json.putArray("cautions")::add);
        report.assumed().forEach(json.putArray("assumed")::add);
        return json;
    }

    private void advice(ObjectNode json) {
        report.calibration().nextReading().ifPresent(next -> json.put("next", next.says()));
        report.calibration().belief().stop().ifPresent(says -> json.put("stop", says));
    }

    /** The lines flown, in words. */
    private String about() {
        return report.lines().stream().map(DrillShown::line).collect(Collectors.joining("; "));
    }

    private static String line(TestedLine line) {
        String setting = line.setting().isEmpty() ? "" : " (" + line.setting() + ")";
        return line.discharge() + ", " + String.join(" + ", line.hoses()) + ", " + line.nozzle() + setting;
    }

    private ObjectNode judged(Judged judged) {
        ObjectNode json = Answer.object().put("used", judged.used());
        if (!report.calibration().isSilent()) {
            json.put("expected", shown.text(judged.predictedPump().value()));
        }
        json.put("kind", judged.finding().kind().word());
        json.put("says", judged.finding().says()).put("check", judged.finding().check());
        ArrayNode also = json.putArray("also");
        judged.finding().also().stream().map(FindingKind::word).forEach(also::add);
        report.needed().stream()
                .filter(row -> row.ifUsed().containsKey(judged.reading()))
                .reduce((shorter, longer) -> longer)
                .ifPresent(row -> json.put("with", withAndWithout(row, judged.reading())));
        return json;
    }

    private String withAndWithout(NeededRow row, String reading) {
        return "Needed at " + shown.text(row.length()) + ", level: "
                + shown.text(row.pump().value())
                + " without it, "
                + row.ifUsed().entrySet().stream()
                        .filter(entry -> entry.getKey().equals(reading))
                        .map(entry -> shown.text(entry.getValue().value()))
                        .findFirst()
                        .orElse("not known")
                + " with it.";
    }

    private void rows(ArrayNode json, List<RuleRow> rows) {
        for (RuleRow row : rows) {
            ObjectNode one = json.addObject().put("length", shown.text(row.length()));
            one.put("line", line(row.line()));
            one.put("pump", shown.text(row.rulePump())).put("flow", shown.withBand(row.flow()));
            one.put("tip", shown.text(row.tip())).put("reaction", shown.text(row.reaction()));
            one.put("needed", shown.withBand(row.neededPump()));
        }
    }

    private ObjectNode needed(NeededRow row) {
        ObjectNode json = Answer.object().put("length", shown.text(row.length()));
        json.put("line", line(row.line()));
        json.put("pump", shown.withBand(row.pump()));
        ObjectNode with = json.putObject("with");
        row.ifUsed().forEach((reading, pump) -> with.put(reading, shown.withBand(pump)));
        return json;
    }

    static ObjectNode withheld(Withheld item) {
        return Answer.object().put("what", item.what()).put("why", item.why()).put("needs", item.needs());
    }

    static ArrayNode workings(List<Working> workings) {
        ArrayNode all = Answer.array();
        for (Working working : workings) {
            ArrayNode steps = all.addObject().put("title", working.title()).putArray("steps");
            working.steps()
                    .forEach(step -> steps.addObject()
                            .put("says", step.says())
                            .put("formula", step.formula())
                            .put("numbers", step.numbers())
                            .put("result", step.result())
                            .put("source", step.source()));
        }
        return all;
    }
}
