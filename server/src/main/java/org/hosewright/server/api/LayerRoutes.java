package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Set;
import org.hosewright.files.track.MapLayer;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;

/** The layers of the company's own map: buildings, hydrants, lanes. Nothing comes from outside. */
final class LayerRoutes {
    private final Leaves leaves;

    LayerRoutes(Leaves leaves) {
        this.leaves = leaves;
    }

    List<Route> list() {
        return List.of(
                Route.get("/layers", this::listAll), Route.post("/layers/{layer}", LeafKind.LAYER.hat(), this::keep));
    }

    private void listAll(Context answer) {
        ObjectNode json = Answer.object();
        ArrayNode layers = json.putArray("layers");
        for (Leaf leaf : leaves.listWhole(LeafKind.LAYER)) {
            MapLayer layer = MapLayer.read(leaf.text());
            ObjectNode one = LeafJson.head(leaf.head()).put("attribution", layer.attribution());
            one.set("geojson", Answer.parse(layer.geojson()));
            layers.add(one);
        }
        Answer.json(answer, json);
    }

    private void keep(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn", "title", "attribution", "geojson"));
        String id = answer.pathParam("layer");
        var layer = new MapLayer(asked.text("attribution").strip(), asked.text("geojson"));
        var draft = new LeafDraft(LeafKind.LAYER, id, asked.number("basedOn"), asked.text("title"), layer.write());
        LeafJson.send(answer, leaves.save(draft, asked.act()));
    }
}
