package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.files.order.SigningText;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.order.SigningRule;
import org.hosewright.ledger.person.People;

/** How many people an order takes: shown, and laid down by an owner of the record. */
final class SigningRoutes {
    private static final String ID = "signing";

    private final Leaves leaves;
    private final People people;

    SigningRoutes(Leaves leaves, People people) {
        this.leaves = leaves;
        this.people = people;
    }

    List<Route> list() {
        return List.of(
                Route.get("/signing", this::show), Route.post("/signing", LeafKind.SETTING.hat(), this::layDown));
    }

    /** The rule that holds now. */
    SigningRule rule() {
        return find().map(leaf -> SigningText.read(leaf.text())).orElse(SigningRule.AT_FIRST);
    }

    private Optional<Leaf> find() {
        return leaves.find(LeafKind.SETTING, ID);
    }

    private void show(Context answer) {
        ObjectNode json = Answer.object().put("signers", rule().signers());
        json.put("version", find().map(Leaf::version).orElse(0L));
        Answer.json(answer, json);
    }

    private void layDown(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "signers", "basedOn"));
        var rule = new SigningRule(Math.toIntExact(Math.max(0, Math.min(asked.number("signers"), 9))));
        if (rule.signers() > 1 && !people.isAnyone()) {
            throw Refused.withoutAccounts();
        }
        String title = "orders take " + (rule.signers() == 1 ? "one person" : "two people");
        var draft = new LeafDraft(LeafKind.SETTING, ID, asked.number("basedOn"), title, SigningText.write(rule));
        LeafJson.send(answer, leaves.save(draft, asked.act()));
    }
}
