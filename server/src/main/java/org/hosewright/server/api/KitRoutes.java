package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import org.hosewright.files.kit.KitChange;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.kit.KitText;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.kit.KitSaving;
import org.hosewright.ledger.kit.Kits;

/** The kit: shown, replaced, edited entry by entry, written out. */
final class KitRoutes {
    private final Kits kits;
    private final CurrentKit current;

    KitRoutes(Kits kits, CurrentKit current) {
        this.kits = kits;
        this.current = current;
    }

    List<Route> list() {
        return List.of(
                Route.get("/kit", answer -> send(answer, current.get())),
                Route.post("/kit", Hat.ANALYST, this::replace),
                Route.post("/kit/edits", Hat.ANALYST, this::edit),
                Route.get("/kit/revisions/{version}", this::sendRevision),
                Route.get("/kit.yaml", this::writeOut));
    }

    private void replace(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "text", "basedOn", "source"));
        var document =
                KitDocument.of(asked.text("text"), asked.findText("source").orElse("kit"));
        save(answer, document, asked.number("basedOn"), asked.act());
    }

    private void edit(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "edits", "basedOn"));
        List<KitChange> edits =
                asked.objects("edits").stream().map(KitRoutes::change).toList();
        save(answer, current.get().document().with(edits), asked.number("basedOn"), asked.act());
    }

    private static KitChange change(Asked edit) {
        List<String> path = edit.only(Set.of("path", "value")).texts("path");
        return edit.findText("value")
                .<KitChange>map(value -> new KitChange.Set(path, value))
                .orElseGet(() -> new KitChange.Remove(path));
    }

    private void save(Context answer, KitDocument document, long basedOn, Act act) {
        KitSaving saving = kits.save(document.text(), basedOn, act);
        if (saving instanceof KitSaving.Saved saved) {
            send(answer, current.find(saved.revision().version()).orElseThrow());
        } else if (saving instanceof KitSaving.Conflict conflict) {
            Problem.conflict(
                    answer,
                    "Somebody saved another kit in between; nothing was changed. Both stand below.",
                    RecordJson.kit(conflict.stored()));
        }
    }

    private void sendRevision(Context answer) {
        send(answer, current.find(version(answer)).orElseThrow(() -> Refused.unknown("kit revision")));
    }

    private static long version(Context request) {
        String text = request.pathParam("version");
        if (!text.matches("[0-9]{1,15}")) {
            throw new InvalidInput("version", text, "a whole number", "");
        }
        return Long.parseLong(text);
    }

    private static void send(Context answer, CurrentKit.Read kit) {
        ObjectNode json = RecordJson.kit(kit.revision());
        json.set("entries", Answer.tree(KitText.entries(kit.document().kit())));
        kit.document().assumed().forEach(json.putArray("assumed")::add);
        Answer.json(answer, json);
    }

    private void writeOut(Context answer) {
        Answer.file(
                answer, "kit.yaml", "application/yaml", current.get().revision().text());
    }
}
