package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.documents.Papers;
import org.hosewright.evidence.calibration.Finding;
import org.hosewright.evidence.calibration.RowCheck;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;
import org.hosewright.files.kit.KitAcceptance;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.NightEngines;
import org.hosewright.ledger.line.NightGear;
import org.hosewright.server.guard.Refusal;
import org.hosewright.server.setup.ServerConfig;

/** What a test night says: one row at a time while it is typed, and all of it together. */
final class AnalysisRoutes {
    private final DrillRoutes drills;
    private final CurrentKit kit;
    private final NightDesk desk;
    private final ServerConfig config;

    AnalysisRoutes(DrillRoutes drills, CurrentKit kit, ServerConfig config) {
        this.drills = drills;
        this.kit = kit;
        this.desk = new NightDesk(kit);
        this.config = config;
    }

    List<Route> list() {
        return List.of(
                Route.ask("/drills/{drill}/row-check", this::checkRow),
                Route.get("/drills/{drill}/report", this::report),
                Route.get("/drills/{drill}/profile", this::profile),
                Route.get("/drills/{drill}/result.json", this::result),
                Route.get("/drills/{drill}/report.pdf", this::print),
                Route.post("/drills/{drill}/acceptance", Hat.ANALYST, this::accept));
    }

    private void checkRow(Context answer) {
        Asked asked = Asked.of(answer, Set.of("row", "cells"));
        DrillRecord drill = drills.of(answer);
        var row = new ReadingsTable.Row(0, asked.cells("cells"));
        ObjectNode json = Answer.object().put("complete", Cells.complete(row));
        try {
            finding(json, check(StandingNight.before(drill, asked.findText("row")), row));
        } catch (InvalidInput e) {
            trouble(json, e, drill.columns());
        }
        Answer.json(answer, json);
    }

    private Finding check(DrillRecord before, ReadingsTable.Row row) {
        Kit now = kit.get().document().kit();
        Reading next = ReadingParser.parse(row, now, "this night");
        List<Reading> readings = StandingNight.of(before, now).readings();
        NightEngines engines = NightEngines.of(readings).with(next);
        var gear = NightGear.of(now, Optional.of(before.date()), engines);
        return RowCheck.check(new Night(readings, gear, Map.of(), now.units()), next);
    }

    private void report(Context answer) {
        DrillRecord drill = drills.of(answer);
        StandingNight night = desk.standing(drill);
        ObjectNode json = Answer.object().put("version", drill.version());
        ObjectNode troubles = json.putObject("troubles");
        night.troubles().forEach((row, error) -> trouble(troubles.putObject(row), error, drill.columns()));
        if (!night.readings().isEmpty()) {
            json.set("shown", DrillShown.of(desk.report(drill)));
        }
        Answer.json(answer, json);
    }

    private void profile(Context answer) {
        DrillRecord drill = drills.of(answer);
        DrillReport report = desk.report(drill);
        Optional<Length> length = Queried.find(answer, "length").map(QuantityText::length);
        int which = Queried.number(answer, "line", 0);
        ObjectNode json = report.lines().stream()
                .skip(which)
                .findFirst()
                .flatMap(line -> new ProfileShown(report, line).json(length, Queried.sheet(answer)))
                .orElseThrow(() -> new Refusal(
                        409,
                        "Not known",
                        "This night does not tell yet what its line needs; see what would settle it."));
        Answer.json(answer, json);
    }

    private void result(Context answer) {
        answer.contentType("application/json; charset=utf-8").result(ResultJson.drill(desk.whole(drills.of(answer))));
    }

    private void print(Context answer) {
        DrillRecord drill = drills.of(answer);
        byte[] pdf = Papers.drillReport(desk.whole(drill), PaperRoutes.stamp(config));
        Answer.file(answer, DrillRoutes.fileName(drill) + ".report.pdf", "application/pdf", pdf);
    }

    private void accept(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "version", "basedOn"));
        DrillRecord drill = drills.of(answer);
        CurrentKit.Read now = kit.get();
        KitAcceptance.Accepted made = KitAcceptance.of(now.document(), desk.whole(drill));
        if (made.taken().isEmpty()) {
            throw new Refusal(
                    409, "Nothing to accept", "This night determines no number that the kit could take over.");
        }
        var seen = new Drills.Seen(drill.id(), asked.number("version"));
        new Acceptance(made)
                .send(answer, drills.accept(seen, made.document().text(), asked.number("basedOn"), asked.act()));
    }

    private static void finding(ObjectNode json, Finding finding) {
        json.put("kind", finding.kind().word()).put("says", finding.says()).put("check", finding.check());
    }

    private static void trouble(ObjectNode json, InvalidInput error, List<String> columns) {
        json.put("trouble", String.valueOf(error.getMessage()));
        String named = base(error.where().substring(error.where().lastIndexOf(", ") + 1));
        columns.stream()
                .filter(column -> base(column).equals(named))
                .findFirst()
                .ifPresent(column -> json.put("column", column));
    }

    /** A column's head without its unit. */
    private static String base(String head) {
        int unit = head.indexOf('[');
        return (unit < 0 ? head : head.substring(0, unit)).strip();
    }
}
