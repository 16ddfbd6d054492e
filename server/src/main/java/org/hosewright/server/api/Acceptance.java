package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import org.hosewright.files.kit.KitAcceptance;
import org.hosewright.ledger.drill.Accepting;

/** How the taking over of a night's numbers ended, as it is answered.
 *
 * @param made the numbers taken over
 */
record Acceptance(KitAcceptance.Accepted made) {

    void send(Context answer, Accepting ended) {
        if (ended instanceof Accepting.Accepted accepted) {
            ObjectNode json = Answer.object();
            json.set("drill", RecordJson.drill(accepted.drill()));
            json.set("kit", RecordJson.kit(accepted.kit()));
            json.put("says", says());
            taken(json.putArray("taken"));
            Answer.json(answer, json);
        } else if (ended instanceof Accepting.DrillChanged changed) {
            Problem.conflict(
                    answer,
                    "The readings were changed after these numbers were worked out; look at the new ones first.",
                    RecordJson.drill(changed.stored()));
        } else if (ended instanceof Accepting.KitChanged changed) {
            Problem.conflict(
                    answer,
                    "Somebody saved another kit in between; look at it first, then accept again.",
                    RecordJson.kit(changed.stored()));
        }
    }

    private String says() {
        int count = made.taken().size();
        return count == 1
                ? "One number was taken over into the kit."
                : count + " numbers were taken over into the kit.";
    }

    private void taken(ArrayNode json) {
        made.taken()
                .forEach(one -> json.addObject()
                        .put("what", String.join(" ", one.path()))
                        .put("was", one.was())
                        .put("now", one.now()));
    }
}
