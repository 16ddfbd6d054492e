package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import org.hosewright.ledger.history.History;

/** What was done, by whom, when and why. */
final class HistoryRoutes {
    private static final int MOST = 500;

    private final History history;

    HistoryRoutes(History history) {
        this.history = history;
    }

    List<Route> list() {
        return List.of(Route.get("/history", this::listLatest));
    }

    private void listLatest(Context answer) {
        ObjectNode json = Answer.object();
        ArrayNode entries = json.putArray("entries");
        history.listLatest(MOST).forEach(entry -> entries.add(RecordJson.entry(entry)));
        Answer.json(answer, json);
    }
}
