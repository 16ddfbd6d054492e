package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafHead;
import org.hosewright.ledger.leaf.LeafSaving;

/** Leaves of the record as JSON. */
final class LeafJson {
    private LeafJson() {}

    static ObjectNode head(LeafHead head) {
        ObjectNode json = RecordJson.mark(head.mark());
        return json.put("id", head.id()).put("version", head.version()).put("title", head.title());
    }

    /** Answers how saving ended: what stands now, or that somebody was faster. */
    static void send(Context answer, LeafSaving saving) {
        if (saving instanceof LeafSaving.Saved saved) {
            Answer.json(answer, head(saved.leaf().head()));
        } else if (saving instanceof LeafSaving.Conflict conflict) {
            Leaf stored = conflict.stored();
            Problem.conflict(
                    answer,
                    "Somebody changed this " + stored.kind().word() + " in between; nothing was changed.",
                    head(stored.head()).put("text", stored.text()));
        }
    }
}
