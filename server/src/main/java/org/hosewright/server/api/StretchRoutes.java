package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.files.walk.StretchText;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.stretch.KeptStretch;

/** Stretches to addresses: estimated, kept, changed, and learnt from once they were laid. */
final class StretchRoutes {
    private final Leaves leaves;
    private final StretchDesk desk;

    StretchRoutes(Leaves leaves, StretchDesk desk) {
        this.leaves = leaves;
        this.desk = desk;
    }

    List<Route> list() {
        return List.of(
                Route.ask("/stretches/estimate", this::estimate),
                Route.get("/stretches/factor", this::factor),
                Route.get("/stretches", this::listAll),
                Route.post("/stretches", LeafKind.STRETCH.hat(), this::keep),
                Route.get("/stretches/{stretch}", this::show),
                Route.post("/stretches/{stretch}", LeafKind.STRETCH.hat(), this::change),
                Route.post("/stretches/{stretch}/laid", LeafKind.STRETCH.hat(), this::laid));
    }

    private void estimate(Context answer) {
        Asked asked = Asked.of(answer, Set.of("stretch"));
        send(answer, StretchText.read(asked.json("stretch")));
    }

    private void factor(Context answer) {
        Answer.json(answer, StretchShown.factor(desk.findFactor()).put("walks", desk.countWalked()));
    }

    private void listAll(Context answer) {
        ObjectNode json = Answer.object();
        ArrayNode stretches = json.putArray("stretches");
        Map<String, List<String>> why = desk.watch().reasons();
        leaves.list(LeafKind.STRETCH).forEach(head -> {
            ObjectNode one = LeafJson.head(head);
            why.getOrDefault(head.id(), List.of()).forEach(one.putArray("stale")::add);
            stretches.add(one);
        });
        Answer.json(answer, json);
    }

    private void keep(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "stretch"));
        KeptStretch stretch = StretchText.read(asked.json("stretch"));
        desk.report(stretch);
        var draft = LeafDraft.ofNew(LeafKind.STRETCH, stretch.address(), desk.text(stretch));
        LeafJson.send(answer.status(201), leaves.save(draft, asked.act()));
    }

    private void change(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn", "stretch"));
        KeptStretch stretch = StretchText.read(asked.json("stretch"));
        desk.report(stretch);
        save(answer, asked, stretch);
    }

    private void laid(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn", "on", "used"));
        var once =
                new KeptStretch.LaidOnce(AskedChanges.date(asked.text("on")), QuantityText.length(asked.text("used")));
        save(answer, asked, StretchText.read(leaf(answer).text()).withLaid(once));
    }

    private void save(Context answer, Asked asked, KeptStretch stretch) {
        String id = leaf(answer).id();
        var draft = new LeafDraft(LeafKind.STRETCH, id, asked.number("basedOn"), stretch.address(), desk.text(stretch));
        LeafJson.send(answer, leaves.save(draft, asked.act()));
    }

    private void show(Context answer) {
        Leaf leaf = leaf(answer);
        ObjectNode json = shown(StretchText.read(leaf.text()));
        json.set("kept", LeafJson.head(leaf.head()));
        json.set("stretch", Answer.parse(leaf.text()));
        desk.watch().why(leaf.id()).forEach(json.putArray("stale")::add);
        Answer.json(answer, json);
    }

    private void send(Context answer, KeptStretch stretch) {
        Answer.json(answer, shown(stretch));
    }

    private ObjectNode shown(KeptStretch stretch) {
        return new StretchShown(desk.kit(), desk.report(stretch), desk.findFactor()).json();
    }

    private Leaf leaf(Context request) {
        return leaves.find(LeafKind.STRETCH, request.pathParam("stretch"))
                .orElseThrow(() -> Refused.unknown("stretch"));
    }
}
