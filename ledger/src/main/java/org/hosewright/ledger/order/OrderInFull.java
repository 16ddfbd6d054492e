package org.hosewright.ledger.order;

import java.util.List;
import java.util.Optional;
import org.hosewright.ledger.kit.Kit;

/** A set of ordered pressures with all that one needs to judge it.
 *
 * @param revision the set as stored
 * @param book all sets, of which it is one
 * @param set what it says
 * @param kit the kit that it rests on
 * @param before the order signed before it, where there is one
 * @param stale what of it is no longer so
 */
public record OrderInFull(
        OrderRevision revision, OrderBook book, OrderSet set, Kit kit, Optional<OrderSet> before, Staleness stale) {

    public OrderBook.Standing standing() {
        return book.standing(revision);
    }

    /** Why numbers of it are stale, each reason once, as sentences. */
    public List<String> whyStale() {
        return stale.reasons().values().stream()
                .flatMap(List::stream)
                .distinct()
                .sorted()
                .toList();
    }

    /** Why numbers of one engine are stale, each reason once, as sentences. */
    public List<String> whyStale(String engine) {
        return set.linesOf(engine).stream()
                .flatMap(line -> stale.why(line.hosePackage()).stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** Its name on every sheet: number and code. */
    public String name() {
        return "order " + revision.number() + ", " + revision.code();
    }
}
