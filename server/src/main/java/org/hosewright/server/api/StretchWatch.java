package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.hosewright.files.walk.StretchText;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.Staleness;
import org.hosewright.ledger.stretch.KeptStretch;
import org.hosewright.ledger.stretch.StretchStaleness;

/** Which stretches' sheets no longer say what is so, and why. */
final class StretchWatch {
    private final Leaves leaves;
    private final CurrentKit current;
    private final OrderDesk orders;
    private final CompanyFactor factor;
    private final Cache<Seen, Map<String, List<String>>> found =
            Caffeine.newBuilder().maximumSize(2).build();

    StretchWatch(Leaves leaves, CurrentKit current, OrderDesk orders) {
        this.leaves = leaves;
        this.current = current;
        this.orders = orders;
        this.factor = new CompanyFactor(leaves);
    }

    /** What the answer hangs on: each stretch's last version, the orders, the kit, the beds, the day. */
    private record Seen(List<Long> stretches, OrderDesk.Standing standing) {}

    /** By id of each kept stretch, why it is stale; empty where it stands. */
    Map<String, List<String>> reasons() {
        return Objects.requireNonNull(found.get(new Seen(seen(), orders.standing()), seen -> all()));
    }

    /** The last version of each stretch and walk, as a key of what hangs on them. */
    List<Long> seen() {
        return factor.seen();
    }

    /** Why one stretch is stale; empty where it stands. */
    List<String> why(String id) {
        return reasons().getOrDefault(id, List.of());
    }

    /** The stale ones with their reasons, and how many are kept in all. */
    ObjectNode json() {
        Map<String, List<String>> reasons = reasons();
        ObjectNode json = Answer.object().put("kept", reasons.size());
        ArrayNode stale = json.putArray("stale");
        leaves.list(LeafKind.STRETCH).stream()
                .filter(head -> !reasons.getOrDefault(head.id(), List.of()).isEmpty())
                .forEach(head -> {
                    ObjectNode one = stale.addObject().put("id", head.id()).put("title", head.title());
                    reasons.getOrDefault(head.id(), List.of()).forEach(one.putArray("why")::add);
                });
        return json;
    }

    private Map<String, List<String>> all() {
        OrderBook book = orders.book();
        Kit kit = current.get().document().kit();
        Map<Leaf, KeptStretch> stretches = new LinkedHashMap<>();
        leaves.listWhole(LeafKind.STRETCH).forEach(leaf -> stretches.put(leaf, StretchText.read(leaf.text())));
        var now = new StretchStaleness.Present(
                new Staleness.Standing(kit, orders.beds().beds(orders.beds().seen()), orders.today(kit)),
                orders.findOrdered(book),
                factor.find(kit));
        Map<String, List<String>> reasons = new LinkedHashMap<>();
        stretches.forEach((leaf, kept) -> reasons.put(
                leaf.id(),
                findGrounds(lookedAt(leaf, kept), book)
                        .map(then -> StretchStaleness.reasons(kept, then, now))
                        .orElse(List.of())));
        return reasons;
    }

    /** The version that people last looked at as a whole: photographs and times that it was laid are added to it. */
    private Leaf lookedAt(Leaf last, KeptStretch kept) {
        Leaf looked = last;
        KeptStretch later = kept;
        while (looked.version() > 1) {
            Leaf before = leaves.findVersion(LeafKind.STRETCH, looked.id(), looked.version() - 1)
                    .orElseThrow();
            KeptStretch earlier = StretchText.read(before.text());
            if (!later.onlyAddsTo(earlier)) {
                return looked;
            }
            looked = before;
            later = earlier;
        }
        return looked;
    }

    private Optional<StretchStaleness.Grounds> findGrounds(Leaf looked, OrderBook book) {
        long entry = looked.mark().entry();
        return current.findBefore(entry).map(read -> {
            Kit kit = read.document().kit();
            LocalDate day = LocalDate.ofInstant(looked.mark().at(), ZoneId.of(kit.zone()));
            return new StretchStaleness.Grounds(kit, day, orders.findOrdered(book.before(entry)));
        });
    }
}
