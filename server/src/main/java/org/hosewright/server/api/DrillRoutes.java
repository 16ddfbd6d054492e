package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.night.Reading;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.Accepting;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.DrillSaving;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.server.door.Admission;
import org.hosewright.server.door.Visitor;

/** Test nights as they are kept: listed, started, changed, written out. */
final class DrillRoutes {
    private final Drills drills;
    private final CurrentKit kit;

    DrillRoutes(Drills drills, CurrentKit kit) {
        this.drills = drills;
        this.kit = kit;
    }

    List<Route> list() {
        return List.of(
                Route.get("/drills", this::listAll),
                Route.post("/drills", Hat.RECORDER, this::start),
                Route.get("/drills/{drill}", answer -> Answer.json(answer, RecordJson.drill(of(answer)))),
                Route.post("/drills/{drill}/changes", Admission.of(Hat.RECORDER, Hat.ANALYST), this::change),
                Route.get("/drills/{drill}/readings.csv", this::writeOut));
    }

    /** The drill that a request names. */
    DrillRecord of(Context request) {
        String id = request.pathParam("drill");
        return drills.findDrill(id).orElseThrow(() -> Refused.unknown("test night"));
    }

    Accepting accept(Drills.Seen seen, String kitText, long basedOn, Act act) {
        return drills.accept(seen, kitText, basedOn, act);
    }

    private void listAll(Context answer) {
        ObjectNode json = Answer.object();
        ArrayNode all = json.putArray("drills");
        drills.listDrills().forEach(drill -> all.add(RecordJson.summary(drill)));
        Answer.json(answer, json);
    }

    private void start(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "name", "date", "columns", "csv", "source"));
        Optional<ReadingsTable> table = asked.findText("csv").map(csv -> imported(csv, asked));
        List<String> columns = table.map(ReadingsTable::columns).orElseGet(() -> asked.texts("columns"));
        var head = new DrillHead(asked.text("name").strip(), AskedChanges.date(asked.text("date")), columns);
        List<Map<String, String>> rows = table.stream()
                .flatMap(found -> found.rows().stream())
                .map(ReadingsTable.Row::cells)
                .toList();
        Answer.json(answer.status(201), RecordJson.drill(drills.create(head, rows, asked.act())));
    }

    /** The table of a file, analysed once: one that cannot be used is refused before anything is stored. */
    private ReadingsTable imported(String csv, Asked asked) {
        String source = asked.findText("source").orElse("readings");
        ReadingsTable table = ReadingsFile.read(csv, source);
        Kit now = kit.get().document().kit();
        Optional<LocalDate> date = Optional.of(AskedChanges.date(asked.text("date")));
        List<Reading> readings = ReadingParser.parse(table, now, source);
        try {
            DrillAnalysis.of(source, date, now, readings, Map.of());
        } catch (InvalidInput e) {
            throw e.at(source);
        }
        return table;
    }

    private void change(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "changes"));
        List<DrillChange> changes = AskedChanges.of(asked.objects("changes"));
        Visitor.of(answer).require(DrillChange.hat(changes));
        DrillSaving saving = drills.change(of(answer).id(), changes, asked.act());
        if (saving instanceof DrillSaving.Saved saved) {
            Answer.json(answer, RecordJson.drill(saved.drill()));
        } else if (saving instanceof DrillSaving.Conflict conflict) {
            Problem.conflict(
                    answer,
                    "Somebody changed the same row in between; nothing was changed. Both stand below.",
                    RecordJson.drill(conflict.stored()));
        }
    }

    private void writeOut(Context answer) {
        DrillRecord drill = of(answer);
        Answer.file(answer, fileName(drill) + ".readings.csv", "text/csv", ReadingsFile.write(table(drill)));
    }

    /** The standing rows as a table. */
    static ReadingsTable table(DrillRecord drill) {
        return new ReadingsTable(
                drill.columns(),
                drill.listStanding().stream().map(DrillRoutes::row).toList());
    }

    private static ReadingsTable.Row row(DrillRow row) {
        return new ReadingsTable.Row(0, row.cells());
    }

    /** A night's name, fit for a file. */
    static String fileName(DrillRecord drill) {
        return Answer.fileName(drill.name(), "night-" + drill.date());
    }
}
