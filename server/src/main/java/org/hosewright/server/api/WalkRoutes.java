package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.files.result.ResultJson;
import org.hosewright.files.track.TrackFile;
import org.hosewright.files.walk.KnownLength;
import org.hosewright.files.walk.WalkText;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.walk.MeasuredLength;
import org.hosewright.hydraulics.profile.Sheet;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.walk.KeptWalk;
import org.hosewright.ledger.walk.WalkReport;
import org.hosewright.server.api.WalkDesk.Recorded;
import org.hosewright.server.guard.Body;

/** Ways that people walked: looked at, kept, corrected by a measured length, written out. */
final class WalkRoutes {
    private static final Set<String> ASKED =
            Set.of("name", "track", "package", "measured", "measuredWith", "couplings", "up", "down", "sheet");
    private static final Set<String> KEPT =
            Set.of("name", "track", "package", "measured", "measuredWith", "couplings", "up", "down", "who", "why");

    private final Leaves leaves;
    private final WalkDesk desk;

    WalkRoutes(Leaves leaves, WalkDesk desk) {
        this.leaves = leaves;
        this.desk = desk;
    }

    List<Route> list() {
        return List.of(
                Route.ask("/walks/look", this::look),
                Route.post("/walks", LeafKind.WALK.hat(), this::keep),
                Route.get("/walks", this::listAll),
                Route.get("/walks/{walk}", this::show),
                Route.post("/walks/{walk}/measured", LeafKind.WALK.hat(), this::measure),
                Route.post("/walks/{walk}/pictures", LeafKind.WALK.hat(), this::picture),
                Route.get("/walks/{walk}/result.json", this::result),
                Route.get("/walks/{walk}/way.gpx", answer -> write(answer, TrackFile.Form.GPX, "gpx")),
                Route.get("/walks/{walk}/way.geojson", answer -> write(answer, TrackFile.Form.GEOJSON, "geojson")));
    }

    private void look(Context answer) {
        Asked asked = Asked.of(answer, ASKED, Body.MOST_TRACK_BYTES);
        Recorded walk = recorded(asked);
        Sheet sheet = Queried.sheet(asked.findText("sheet").orElse("laptop"));
        Answer.json(answer, shown(walk, walk.kept().hosePackage(), sheet));
    }

    private void keep(Context answer) {
        Asked asked = Asked.of(answer, KEPT, Body.MOST_TRACK_BYTES);
        Recorded walk = recorded(asked);
        desk.report(walk, walk.kept().hosePackage());
        var draft = LeafDraft.ofNew(LeafKind.WALK, walk.kept().name(), WalkText.write(walk.kept(), desk.units()));
        LeafJson.send(answer.status(201), leaves.save(draft, asked.act()));
    }

    private void listAll(Context answer) {
        ObjectNode json = Answer.object();
        ArrayNode walks = json.putArray("walks");
        leaves.list(LeafKind.WALK).forEach(head -> walks.add(LeafJson.head(head)));
        Answer.json(answer, json);
    }

    private void show(Context answer) {
        Leaf leaf = desk.leaf(answer.pathParam("walk"));
        Recorded walk = Recorded.of(leaf);
        ObjectNode json = shown(walk, desk.chosen(answer, walk), Queried.sheet(answer));
        json.set("kept", LeafJson.head(leaf.head()));
        walk.kept().pictures().forEach(json.putArray("pictures")::add);
        walk.kept()
                .measured()
                .ifPresent(known -> json.put("measuredWith", walk.kept().by().word()));
        json.put("couplingsLaid", walk.kept().couplingsLaid());
        Answer.json(answer, json);
    }

    private void measure(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn", "length", "with"));
        Leaf leaf = desk.leaf(answer.pathParam("walk"));
        Recorded before = Recorded.of(leaf);
        KeptWalk walk =
                before.kept().withMeasured(KnownLength.of(asked.text("length")), KnownLength.by(asked.text("with")));
        desk.report(new Recorded(walk, before.track()), Optional.empty());
        change(answer, asked, leaf, walk);
    }

    private void picture(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn", "picture"));
        Leaf leaf = desk.leaf(answer.pathParam("walk"));
        Leaf picture =
                leaves.find(LeafKind.PICTURE, asked.text("picture")).orElseThrow(() -> Refused.unknown("picture"));
        change(answer, asked, leaf, WalkText.read(leaf.text()).withPicture(picture.id()));
    }

    private void change(Context answer, Asked asked, Leaf leaf, KeptWalk walk) {
        var draft = new LeafDraft(
                LeafKind.WALK, leaf.id(), asked.number("basedOn"), leaf.title(), WalkText.write(walk, desk.units()));
        LeafJson.send(answer, leaves.save(draft, asked.act()));
    }

    private void result(Context answer) {
        Recorded walk = desk.get(answer.pathParam("walk"));
        String json = ResultJson.walk(desk.report(walk, desk.chosen(answer, walk)));
        answer.contentType("application/json; charset=utf-8").result(json);
    }

    private void write(Context answer, TrackFile.Form form, String ending) {
        Recorded walk = desk.get(answer.pathParam("walk"));
        byte[] file = TrackFile.write(desk.report(walk, desk.chosen(answer, walk)), form);
        Answer.file(answer, Answer.fileName(walk.kept().name(), "walk") + "." + ending, form.mediaType(), file);
    }

    private Recorded recorded(Asked asked) {
        Track track = TrackFile.read(asked.text("track").getBytes(StandardCharsets.UTF_8), "track");
        HomeGround.check(leaves, track);
        KeptWalk walk = new KeptWalk(
                KeptWalk.name(asked.findText("name").orElse(""), track),
                asked.text("track"),
                asked.findText("package"),
                asked.findText("measured").map(KnownLength::of),
                asked.findText("measuredWith").map(KnownLength::by).orElse(MeasuredLength.By.TAPE),
                List.of(),
                asked.findText("couplings").map(KnownLength::ofHoseLaid).orElse(false),
                KnownLength.rise(asked.findText("up"), asked.findText("down")));
        return new Recorded(walk, track);
    }

    private ObjectNode shown(Recorded walk, Optional<String> chosen, Sheet sheet) {
        WalkReport report = desk.report(walk, chosen);
        ObjectNode json = new WalkShown(report, desk.findKit()).json();
        json.put("name", walk.kept().name());
        json.set("reaches", WalkShown.reaches(desk.listReaches(report), desk.units()));
        desk.findPicture(report).ifPresent(picture -> {
            json.set("drawing", DrawingJson.of(picture.draw(sheet)));
            json.put(
                    "drawingSays",
                    "The line along the walked way, the ground below it, to its end or to the first section that is not safe.");
        });
        return json;
    }
}
