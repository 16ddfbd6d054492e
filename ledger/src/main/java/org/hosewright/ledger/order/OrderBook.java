package org.hosewright.ledger.order;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;

/** All sets of ordered pressures of a company, and which of them is the order.
 *
 * @param revisions by number, first to last
 */
public record OrderBook(List<OrderRevision> revisions) {
    public OrderBook {
        revisions = revisions.stream()
                .sorted(Comparator.comparingLong(OrderRevision::number))
                .toList();
    }

    /** How a set stands. */
    public enum Standing {
        /** Nobody has signed it yet. */
        PROPOSED("proposed"),
        /** The order. */
        IN_FORCE("in force"),
        /** A later one was signed, or proposed before this one was. */
        SUPERSEDED("superseded"),
        /** Taken back. */
        WITHDRAWN("withdrawn");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** The book as it stood before an entry of the history. */
    public OrderBook before(long entry) {
        return new OrderBook(revisions.stream()
                .filter(revision -> revision.mark().entry() < entry)
                .map(revision -> revision.before(entry))
                .toList());
    }

    /** The order, where there is one. */
    public Optional<OrderRevision> inForce() {
        return last(revisions.stream()
                        .filter(revision -> revision.signature().isPresent())
                        .toList())
                .filter(revision -> !revision.withdrawn());
    }

    /** The set that waits for a signature: the latest, where it has none. */
    public Optional<OrderRevision> proposed() {
        return last(revisions).filter(revision -> revision.signature().isEmpty() && !revision.withdrawn());
    }

    /** The order that was signed last before a number. */
    public Optional<OrderRevision> signedBefore(long number) {
        return last(revisions.stream()
                .filter(revision ->
                        revision.number() < number && revision.signature().isPresent())
                .toList());
    }

    public Standing standing(OrderRevision revision) {
        if (revision.withdrawn()) {
            return Standing.WITHDRAWN;
        }
        if (isSame(inForce(), revision)) {
            return Standing.IN_FORCE;
        }
        return isSame(proposed(), revision) ? Standing.PROPOSED : Standing.SUPERSEDED;
    }

    /** The set of a number.
     *
     * @throws InvalidInput there is none
     */
    public OrderRevision get(long number) {
        return revisions.stream()
                .filter(revision -> revision.number() == number)
                .findFirst()
                .orElseThrow(() ->
                        new InvalidInput("number of the order", Long.toString(number), "1 to " + revisions.size(), ""));
    }

    /** Checks that a step may follow.
     *
     * @param signers how many different people a signature takes: 1, or 2 where the proposer may not sign
     * @throws InvalidInput it may not, and why
     */
    public void require(long number, OrderStep.Kind kind, String who, int signers) {
        OrderRevision revision = get(number);
        Standing standing = standing(revision);
        String needs = switch (kind) {
            case SIGNED -> standing == Standing.PROPOSED ? "" : "the latest proposal, not yet signed";
            case WITHDRAWN ->
                standing == Standing.IN_FORCE || standing == Standing.PROPOSED ? "" : "an order in force or a proposal";
            case FITTED, ACKNOWLEDGED -> standing == Standing.IN_FORCE ? "" : "the order in force";
            case REPORTED, ANSWERED -> revision.signature().isPresent() ? "" : "a signed order";
        };
        if (!needs.isEmpty()) {
            throw new InvalidInput("order " + number + " to be " + kind.word(), standing.word(), needs, "");
        }
        if (kind == OrderStep.Kind.SIGNED
                && signers > 1
                && revision.mark().who().equalsIgnoreCase(who.strip())) {
            throw new InvalidInput("person who signs", who, "another person than the one who proposed it", "");
        }
    }

    private static boolean isSame(Optional<OrderRevision> one, OrderRevision other) {
        return one.filter(revision -> revision.number() == other.number()).isPresent();
    }

    private static Optional<OrderRevision> last(List<OrderRevision> list) {
        return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
    }
}
