package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.hosewright.documents.Papers;
import org.hosewright.files.trial.TrialText;
import org.hosewright.files.trial.TrialTexts;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.trial.KeptTrial;
import org.hosewright.ledger.trial.Taken;
import org.hosewright.ledger.trial.TrialKey;
import org.hosewright.ledger.trial.TrialPlan;
import org.hosewright.ledger.trial.TrialReport;
import org.hosewright.ledger.trial.TrialTask;
import org.hosewright.server.guard.Refusal;
import org.hosewright.server.setup.ServerConfig;

/** Blind trials: set up, read, opened. Which label is which leaves only by {@link #key} and after {@link #open}. */
final class TrialRoutes {
    private static final Set<String> TASK =
            Set.of("measure", "held", "over", "longest", "matters", "scatter", "step", "kinds", "relays");

    private final Leaves leaves;
    private final TrialDesk desk;
    private final ServerConfig config;

    TrialRoutes(Leaves leaves, TrialDesk desk, ServerConfig config) {
        this.leaves = leaves;
        this.desk = desk;
        this.config = config;
    }

    List<Route> list() {
        return List.of(
                Route.ask("/trials/size", this::size),
                Route.get("/trials", this::listAll),
                Route.post("/trials", LeafKind.TRIAL.hat(), this::begin),
                Route.get("/trials/{trial}", this::show),
                Route.post("/trials/{trial}/readings", LeafKind.TRIAL.hat(), this::read),
                Route.post("/trials/{trial}/aside", LeafKind.TRIAL.hat(), this::aside),
                Route.post("/trials/{trial}/more", LeafKind.TRIAL.hat(), this::more),
                Route.post("/trials/{trial}/key", LeafKind.TRIAL.hat(), this::key),
                Route.post("/trials/{trial}/opened", LeafKind.TRIAL.hat(), this::open),
                Route.get("/trials/{trial}/sheet.pdf", this::sheet));
    }

    private void size(Context answer) {
        Asked asked = Asked.of(answer, TASK);
        TrialTask task = task(asked);
        int kinds = (int)
                Numbers.requireWithin("kinds to compare", asked.texts("kinds").size(), 2, 12, "");
        QuantityShown shown = QuantityShown.of(desk.units());
        Answer.json(
                answer,
                Answer.object()
                        .put("relays", task.needed(kinds))
                        .put("find", shown.text(task.find()))
                        .put("scatter", shown.text(task.scatter())));
    }

    private void listAll(Context answer) {
        ObjectNode json = Answer.object();
        ArrayNode trials = json.putArray("trials");
        leaves.list(LeafKind.TRIAL).forEach(head -> trials.add(LeafJson.head(head)));
        Answer.json(answer, json);
    }

    private void begin(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "name", "holders", "task"));
        Asked wanted = asked.object("task").only(TASK);
        int relays = small(wanted, "relays", "re-lays of each kind");
        var plan = new TrialPlan(
                asked.text("name").strip(), wanted.texts("kinds"), asked.texts("holders"), task(wanted), relays);
        plan.task().needed(plan.kinds().size());
        TrialDesk.Begun begun = desk.begin(plan, asked.act());
        if (begun.saving() instanceof LeafSaving.Saved saved) {
            Answer.json(answer.status(201), LeafJson.head(saved.leaf().head()).put("code", begun.code()));
        } else {
            LeafJson.send(answer, begun.saving());
        }
    }

    private static TrialTask task(Asked asked) {
        return TrialTexts.task(TrialTexts.measure(asked.text("measure"), ""), asked::text);
    }

    private void show(Context answer) {
        Leaf leaf = desk.leaf(answer.pathParam("trial"));
        TrialReport report = TrialReport.of(TrialText.read(leaf.text()), desk.units());
        ObjectNode json = new TrialShown(report).json();
        json.set("kept", LeafJson.head(leaf.head()));
        Answer.json(answer, json);
    }

    private void read(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "lay", "pump", "tip", "flow"));
        Taken taken = TrialTexts.taken(asked::findText);
        Act act = asked.act();
        int lay = small(asked, "lay");
        change(answer, act, trial -> trial.withReading(lay, taken, act, desk.now()));
    }

    private void aside(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "reading"));
        Act act = asked.act();
        int number = small(asked, "reading");
        change(answer, act, trial -> trial.withAside(number, act));
    }

    private void more(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "relays"));
        int relays = small(asked, "relays");
        change(answer, asked.act(), trial -> desk.more(trial, relays));
    }

    private void open(Context answer) {
        Act act = Asked.of(answer, Set.of("who", "why")).act();
        TrialKey key = desk.key(answer.pathParam("trial"));
        change(answer, act, trial -> trial.withOpened(key, act, desk.now()));
    }

    private void change(Context answer, Act act, UnaryOperator<KeptTrial> change) {
        LeafJson.send(answer, desk.change(answer.pathParam("trial"), change, act));
    }

    private static int small(Asked asked, String key) {
        return small(asked, key, key);
    }

    private static int small(Asked asked, String key, String what) {
        double given = asked.number(key);
        return (int) Numbers.requireWithin(what, given, 1, TrialPlan.MOST_RELAYS * 12.0 * 20, "");
    }

    /** Shows the key to a holder who has the code, and writes down that it was shown. */
    private void key(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "code"));
        Act act = asked.act();
        String id = answer.pathParam("trial");
        TrialKey key = desk.key(id);
        if (!key.opensWith(asked.text("code"))) {
            throw new Refusal(403, "Not the code", "That code does not open the key of this trial; nothing was shown.");
        }
        LeafSaving saving = desk.change(id, trial -> trial.withShown(act, desk.now()), act);
        if (saving instanceof LeafSaving.Saved saved) {
            Answer.json(answer, TrialShown.key(key, TrialText.read(saved.leaf().text())));
        } else {
            LeafJson.send(answer, saving);
        }
    }

    private void sheet(Context answer) {
        Leaf leaf = desk.leaf(answer.pathParam("trial"));
        byte[] paper =
                Papers.trial(TrialText.read(leaf.text()), desk.company(), desk.units(), PaperRoutes.stamp(config));
        Answer.file(answer, "trial-" + Answer.fileName(leaf.title(), "sheet") + ".pdf", "application/pdf", paper);
    }
}
