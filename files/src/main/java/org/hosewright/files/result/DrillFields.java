package org.hosewright.files.result;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.calibration.Finding;
import org.hosewright.evidence.calibration.FindingKind;
import org.hosewright.evidence.calibration.Judged;
import org.hosewright.evidence.calibration.NextReading;
import org.hosewright.evidence.calibration.Terms;
import org.hosewright.evidence.calibration.Withheld;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.working.Step;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.drill.Differing;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.LeftOut;
import org.hosewright.ledger.drill.NeededRow;
import org.hosewright.ledger.drill.RuleRow;
import org.hosewright.ledger.drill.Swing;
import org.hosewright.ledger.drill.TestedLine;

/** The fields of a test night's result. */
final class DrillFields {
    private final DrillReport report;
    private final UnitSystem units;

    DrillFields(DrillReport report) {
        this.report = report;
        this.units = report.kit().units();
    }

    Map<String, Object> map() {
        Calibration night = report.calibration();
        Fields fields = new Fields(units).put("name", report.name()).put("units", units.word());
        report.date().ifPresent(date -> fields.put("date", date.toString()));
        terms(fields, night.terms())
                .put("residual", night.residual())
                .putAll("readings", night.readings().stream().map(this::reading).toList())
                .putAll(
                        "withheld",
                        night.withheld().stream().map(DrillFields::withheld).toList());
        night.nextReading().ifPresent(next -> fields.put("nextReading", next(next)));
        night.belief().stop().ifPresent(says -> fields.put("stop", says));
        steadiness(fields);
        fields.putAll(
                "differing",
                report.differing().stream().map(DrillFields::differing).toList());
        return fields.putAll(
                        "needed", report.needed().stream().map(this::needed).toList())
                .putAll("rule", report.rule().stream().map(this::rule).toList())
                .putAll("book", report.book().stream().map(this::rule).toList())
                .putAll("workings", workings(report.workings()))
                .put("cautions", report.cautions())
                .put("assumed", report.assumed())
                .map();
    }

    private static Fields terms(Fields fields, Terms terms) {
        return fields.putEach("hoses", "loss", terms.hoses())
                .putEach("discharges", "loss", terms.discharges())
                .putEach("nozzles", "flowFactor", terms.nozzles())
                .putEach("meters", "factor", terms.meters())
                .putEach("gauges", "offset", terms.gauges());
    }

    private void steadiness(Fields fields) {
        fields.putAll(
                        "leftOut",
                        report.steadiness().leftOut().stream()
                                .map(this::leftOut)
                                .toList())
                .putAll(
                        "swings",
                        report.steadiness().swings().stream().map(this::swing).toList());
    }

    /** What would be told without a reading, under the same keys as what is told with it. */
    private Map<String, Object> leftOut(LeftOut out) {
        Fields fields = new Fields(units).put("reading", out.reading());
        return terms(fields, out.terms())
                .putAll("needed", out.needed().stream().map(this::needed).toList())
                .map();
    }

    private static Map<String, Object> differing(Differing one) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("what", one.what());
        map.put("kind", one.kind());
        map.put("also", one.also());
        map.put("says", one.says());
        map.put("check", one.check());
        return map;
    }

    private Map<String, Object> swing(Swing swing) {
        Fields fields = new Fields(units).put("what", swing.what());
        swing.reading().ifPresent(reading -> fields.put("reading", reading));
        swing.without().ifPresent(known -> fields.put("without", known));
        return fields.put("untoldWithout", swing.untoldWithout())
                .put("says", swing.says())
                .map();
    }

    static Map<String, Object> finding(Finding finding) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("kind", finding.kind().word());
        map.put("also", finding.also().stream().map(FindingKind::word).toList());
        map.put("says", finding.says());
        map.put("check", finding.check());
        return map;
    }

    static List<Map<String, Object>> workings(List<Working> workings) {
        return workings.stream()
                .map(working -> {
                    Map<String, Object> map = new LinkedHashMap<>();
                    map.put("title", working.title());
                    map.put(
                            "steps",
                            working.steps().stream().map(DrillFields::step).toList());
                    return map;
                })
                .toList();
    }

    private static Map<String, Object> step(Step step) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("says", step.says());
        if (!step.formula().isEmpty()) {
            map.put("formula", step.formula());
        }
        map.put("numbers", step.numbers());
        map.put("result", step.result());
        if (!step.source().isEmpty()) {
            map.put("source", step.source());
        }
        return map;
    }

    private Map<String, Object> reading(Judged judged) {
        return new Fields(units)
                .put("reading", judged.reading())
                .put("predictedPump", judged.predictedPump())
                .put("excess", judged.excess())
                .put("used", judged.used())
                .put("finding", finding(judged.finding()))
                .map();
    }

    private static Map<String, Object> withheld(Withheld withheld) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("what", withheld.what());
        map.put("why", withheld.why());
        map.put("needs", withheld.needs());
        return map;
    }

    private Map<String, Object> next(NextReading next) {
        return new Fields(units)
                .put("length", next.length())
                .put("tip", next.tip())
                .put("says", next.says())
                .map();
    }

    private Map<String, Object> needed(NeededRow row) {
        Fields fields = line(row.line()).put("length", row.length()).put("pump", row.pump());
        Map<String, Object> ifUsed = new LinkedHashMap<>();
        row.ifUsed().forEach((reading, pump) -> ifUsed.put(reading, fields.quantity(pump)));
        return fields.put("ifUsed", ifUsed).map();
    }

    private Map<String, Object> rule(RuleRow row) {
        return line(row.line())
                .put("length", row.length())
                .put("rulePump", row.rulePump())
                .put("flow", row.flow())
                .put("tip", row.tip())
                .put("reaction", row.reaction())
                .put("neededPump", row.neededPump())
                .map();
    }

    private Fields line(TestedLine line) {
        return new Fields(units)
                .put("discharge", line.discharge())
                .put("hoses", line.chains().get(0).stream().map(Stretch::hose).toList())
                .put("nozzle", line.nozzle())
                .putText("setting", line.setting());
    }
}
