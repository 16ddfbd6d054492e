package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.hosewright.files.practice.PracticeText;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafHead;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.practice.KeptPractice;

/** Practice sheets made from the order in force, and which of their answers no longer hold. */
final class PracticeDesk {
    private final Leaves leaves;
    private final OrderDesk orders;
    private final CurrentKit current;
    private final Cache<Seen, List<Kept>> found =
            Caffeine.newBuilder().maximumSize(2).build();

    PracticeDesk(Leaves leaves, OrderDesk orders, CurrentKit current) {
        this.leaves = leaves;
        this.orders = orders;
        this.current = current;
    }

    /** What the list hangs on: each sheet's last version, the orders, the kit, the beds, the day. */
    private record Seen(List<Long> sheets, OrderDesk.Standing standing) {}

    /** A sheet with the answers that no longer hold, by place from 0. */
    record Kept(LeafHead head, KeptPractice practice, Map<Integer, List<String>> stale) {
        Kept {
            stale = new TreeMap<>(stale);
        }
    }

    List<Kept> list() {
        return Objects.requireNonNull(found.get(new Seen(seen(), orders.standing()), seen -> all()));
    }

    private List<Kept> all() {
        return leaves.listWhole(LeafKind.PRACTICE).stream().map(this::kept).toList();
    }

    /** The last version of each sheet, as a key of what hangs on them. */
    List<Long> seen() {
        return leaves.list(LeafKind.PRACTICE).stream()
                .map(head -> head.mark().entry())
                .toList();
    }

    Kept get(String id) {
        return list().stream()
                .filter(kept -> kept.head().id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refused.unknown("practice sheet"));
    }

    private Kept kept(Leaf leaf) {
        KeptPractice practice = PracticeText.read(leaf.text());
        OrderInFull then = orders.look(practice.order());
        return new Kept(leaf.head(), practice, practice.stale(then.set(), inForce()));
    }

    /** The order that a sheet's answers are printed by: the one in force, else the one it was made from. */
    OrderInFull printedBy(Kept kept) {
        return inForce().orElseGet(() -> orders.look(kept.practice().order()));
    }

    private Optional<OrderInFull> inForce() {
        OrderBook book = orders.book();
        return book.inForce().map(revision -> orders.look(book, revision.number()));
    }

    LeafSaving make(String engine, int problems, Act act) {
        OrderRevision order = orders.book()
                .inForce()
                .orElseThrow(() -> new InvalidInput(
                        "order to practise by", "none in force", "a signed order: propose one and have it signed", ""));
        KeptPractice practice = KeptPractice.of(orders.look(order.number()).set(), order.number(), engine, problems);
        String text =
                PracticeText.write(practice, current.get().document().kit().units());
        return leaves.save(LeafDraft.ofNew(LeafKind.PRACTICE, engine + ", by order " + order.number(), text), act);
    }

    /** How many problems are kept in all, and the stale ones by sheet. */
    ObjectNode json() {
        ObjectNode json = Answer.object()
                .put(
                        "kept",
                        list().stream()
                                .mapToInt(kept -> kept.practice().problems().size())
                                .sum());
        ArrayNode sheets = json.putArray("sheets");
        list().forEach(kept -> sheets.add(shown(kept)));
        return json;
    }

    private static ObjectNode shown(Kept kept) {
        ObjectNode one = LeafJson.head(kept.head());
        one.put("engine", kept.practice().engine()).put("order", kept.practice().order());
        one.put("problems", kept.practice().problems().size());
        ArrayNode stale = one.putArray("stale");
        kept.stale().forEach((place, why) -> {
            ObjectNode problem = stale.addObject().put("problem", place + 1);
            problem.put("package", kept.practice().problems().get(place).hosePackage());
            why.forEach(problem.putArray("why")::add);
        });
        return one;
    }
}
