package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.hosewright.documents.Papers;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.files.plan.BlankReadings;
import org.hosewright.files.plan.PlanText;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.plan.KeptPlan;
import org.hosewright.ledger.plan.PlanAsked;
import org.hosewright.server.guard.Refusal;
import org.hosewright.server.setup.ServerConfig;

/** Test nights before they are flown: proposed, kept, started. */
final class PlanRoutes {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private final Leaves leaves;
    private final Drills drills;
    private final PlanDesk desk;
    private final ServerConfig config;

    PlanRoutes(Leaves leaves, Drills drills, PlanDesk desk, ServerConfig config) {
        this.leaves = leaves;
        this.drills = drills;
        this.desk = desk;
        this.config = config;
    }

    List<Route> list() {
        return List.of(
                Route.ask("/plans/look", this::look),
                Route.get("/plans", this::listAll),
                Route.post("/plans", LeafKind.PLAN.hat(), this::keep),
                Route.get("/plans/{plan}", this::show),
                Route.post("/plans/{plan}/taken-out", LeafKind.PLAN.hat(), this::takeOut),
                Route.post("/plans/{plan}/night", Hat.RECORDER, this::start),
                Route.post("/plans/{plan}/signed", Hat.APPROVER, this::sign),
                Route.get("/plans/{plan}/sheet.pdf", this::print),
                Route.get("/plans/{plan}/result.json", this::result));
    }

    private void look(Context answer) {
        PlanAsked asked = PlanText.readAsked(Asked.of(answer, Set.of("plan")).json("plan"));
        Answer.json(answer, new PlanShown(desk.report(asked)).json());
    }

    private void listAll(Context answer) {
        ObjectNode json = Answer.object();
        ArrayNode plans = json.putArray("plans");
        leaves.list(LeafKind.PLAN).forEach(head -> plans.add(LeafJson.head(head)));
        json.setAll(new PlanChoices(desk.kit(), today()).json());
        Answer.json(answer, json);
    }

    private void keep(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "name", "plan"));
        KeptPlan plan = desk.worked(asked.text("name").strip(), PlanText.readAsked(asked.json("plan")));
        var draft = LeafDraft.ofNew(
                LeafKind.PLAN, plan.name(), PlanText.write(plan, desk.kit().units()));
        LeafSaving saving = leaves.save(draft, asked.act());
        LeafJson.send(answer.status(201), saving);
    }

    private void show(Context answer) {
        PlanDesk.Kept kept = desk.get(answer.pathParam("plan"));
        ObjectNode json = new PlanShown(desk.report(kept.plan())).json();
        json.set("kept", LeafJson.head(kept.leaf().head()));
        json.set("asked", Answer.parse(kept.leaf().text()).path("asked"));
        desk.findChange(kept).ifPresent(says -> json.put("changed", says));
        kept.plan()
                .signed()
                .ifPresent(signed -> json.put("signed", "Signed by " + signed.who() + " on " + day(signed.on()) + "."));
        Answer.json(answer, json);
    }

    private void takeOut(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn"));
        String id = desk.get(answer.pathParam("plan")).leaf().id();
        LeafJson.send(answer, leaves.takeOut(LeafKind.PLAN, id, asked.number("basedOn"), asked.act()));
    }

    /** Starts the night with a row for each reading; hose that is out of date on its day is refused. */
    private void start(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "name", "date"));
        PlanDesk.Kept kept = desk.unchanged(answer.pathParam("plan"));
        LocalDate date = AskedChanges.date(asked.text("date"));
        desk.report(kept.plan().asked().on(date));
        ReadingsTable table = BlankReadings.of(desk.report(kept.plan()));
        String name = asked.findText("name").orElse(kept.plan().name()).strip();
        List<Map<String, String>> rows =
                table.rows().stream().map(ReadingsTable.Row::cells).toList();
        var head = new DrillHead(name, date, table.columns());
        Answer.json(answer.status(201), RecordJson.drill(drills.create(head, rows, asked.act())));
    }

    /** The lead answers for the night; hose that is out of date by then is refused. */
    private void sign(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn"));
        PlanDesk.Kept kept = desk.unchanged(answer.pathParam("plan"));
        Act act = asked.act();
        KeptPlan signed = kept.plan().signedBy(act.who(), today());
        String text = PlanText.write(signed, desk.kit().units());
        Leaf leaf = kept.leaf();
        LeafJson.send(
                answer,
                leaves.save(new LeafDraft(LeafKind.PLAN, leaf.id(), asked.number("basedOn"), leaf.title(), text), act));
    }

    private void print(Context answer) {
        PlanDesk.Kept kept = desk.get(answer.pathParam("plan"));
        desk.findChange(kept).filter(PlanDesk.OTHERWISE::equals).ifPresent(says -> {
            throw new Refusal(409, "Plan it again", says);
        });
        byte[] pdf = Papers.night(desk.report(kept.plan()), stamp(kept));
        Answer.file(answer, Answer.fileName(kept.plan().name(), "night") + ".pdf", "application/pdf", pdf);
    }

    private Stamp stamp(PlanDesk.Kept kept) {
        boolean stands = !config.demo() && desk.findChange(kept).isEmpty();
        return kept.plan()
                .signed()
                .filter(signed -> stands)
                .map(signed -> Stamp.ofNight(signed.who(), day(signed.on())))
                .orElse(PaperRoutes.stamp(config));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(
                config.clock().instant(), ZoneId.of(desk.kit().zone()));
    }

    private static String day(LocalDate date) {
        return DAY.format(date);
    }

    private void result(Context answer) {
        KeptPlan plan = desk.get(answer.pathParam("plan")).plan();
        String text = plan.worked().isEmpty() ? ResultJson.plan(desk.report(plan)) : plan.worked();
        answer.contentType("application/json; charset=utf-8").result(text);
    }
}
