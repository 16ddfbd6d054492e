package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.files.order.OrderText;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.Orders;
import org.hosewright.ledger.order.Staleness;
import org.hosewright.ledger.stretch.StretchStaleness;
import org.hosewright.server.guard.Refusal;

/** Where orders are worked out, looked up with the kit that they rest on, and made ready to print. */
final class OrderDesk {
    /** Sets kept read: the one in force, the one before, a proposed one, and some that people look back at. */
    private static final int KEPT = 8;

    /** Reasons why a sheet is stale that stand on it: a tag's sheet has room for so many. */
    private static final int REASONS_ON_SHEET = 2;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.UK);

    private final Orders orders;
    private final CurrentKit current;
    private final BedDesk beds;
    private final Clock clock;
    private final Cache<Long, OrderSet> sets =
            Caffeine.newBuilder().maximumSize(KEPT).build();
    private final Cache<Long, CardSet> cards =
            Caffeine.newBuilder().maximumSize(KEPT).build();
    private final Cache<Seen, String> shown =
            Caffeine.newBuilder().maximumSize(KEPT).build();
    private final Cache<Looked, Staleness> staleness =
            Caffeine.newBuilder().maximumSize(KEPT).build();

    OrderDesk(Orders orders, CurrentKit current, BedDesk beds, Clock clock) {
        this.orders = orders;
        this.current = current;
        this.beds = beds;
        this.clock = clock;
    }

    /** What a set's staleness hangs on, beside what never changes. */
    private record Looked(long number, long kitVersion, List<BedDesk.Seen> beds, LocalDate day) {}

    /** What an order's page hangs on: orders are never edited, steps only added. */
    private record Seen(Looked looked, int orders, int steps) {}

    /** A sheet's numbers and what stands across it. */
    record Print(OrderInFull order, CardSet cards, Stamp stamp) {}

    OrderBook book() {
        return orders.read();
    }

    /** What lies on each rig where somebody looked. */
    BedDesk beds() {
        return beds;
    }

    /** Ids of the packages that the order in force has pressures for; empty where there is no such order. */
    Set<String> ordered() {
        return book().inForce()
                .map(revision -> set(revision).lines().stream()
                        .map(OrderedLine::hosePackage)
                        .collect(Collectors.toUnmodifiableSet()))
                .orElse(Set.of());
    }

    OrderInFull look(long number) {
        return look(book(), number);
    }

    OrderInFull look(OrderBook book, long number) {
        OrderRevision revision = book.get(number);
        OrderSet set = set(revision);
        Kit then = kitOf(revision);
        CurrentKit.Read read = current.get();
        Kit now = read.document().kit();
        Staleness stale = staleness.get(
                looked(number, read),
                looked -> Staleness.of(set, then, new Staleness.Standing(now, beds.beds(looked.beds()), looked.day())));
        return new OrderInFull(
                revision, book, set, then, book.signedBefore(number).map(this::set), stale);
    }

    /** What all that rests on kit, orders and beds hangs on. */
    record Standing(int orders, int steps, long kitVersion, List<BedDesk.Seen> beds, LocalDate day) {}

    Standing standing() {
        OrderBook book = book();
        CurrentKit.Read read = current.get();
        LocalDate day = today(read.document().kit());
        return new Standing(book.revisions().size(), steps(book), read.version(), beds.seen(), day);
    }

    /** The order in force in a book, where there is one. */
    Optional<StretchStaleness.Ordered> findOrdered(OrderBook book) {
        return book.inForce().map(revision -> new StretchStaleness.Ordered(revision.number(), set(revision)));
    }

    private static int steps(OrderBook book) {
        return book.revisions().stream()
                .mapToInt(revision -> revision.steps().size())
                .sum();
    }

    /** An order as its page shows it, written once as long as nothing of it changes. */
    String shown(long number) {
        OrderBook book = book();
        var seen = new Seen(looked(number, current.get()), book.revisions().size(), steps(book));
        return shown.get(seen, same -> new OrderShown(look(book, number)).json().toString());
    }

    private Looked looked(long number, CurrentKit.Read read) {
        return new Looked(
                number, read.version(), beds.seen(), today(read.document().kit()));
    }

    /** What a set says; its text never changes, so it is read once. */
    private OrderSet set(OrderRevision revision) {
        return sets.get(revision.number(), number -> OrderText.read(orders.text(number)));
    }

    OrderRevision propose(Rounding.Way way, Act act) {
        CurrentKit.Read read = current.get();
        Kit kit = read.document().kit();
        OrderSet set = OrderSet.of(CardAnalysis.of(kit, "", today(kit), way), way);
        if (set.lines().isEmpty()) {
            throw new InvalidInput("kit", kit.company(), "at least one package with figures", "");
        }
        String text = OrderText.write(set);
        return orders.propose(OrderText.code(text), read.revision().version(), text, act);
    }

    /** The sheets of a set, from the set's own numbers.
     *
     * @param engine id of the only engine to print for; empty for all
     * @throws Refusal this program would work out other figures than the set says
     */
    Print print(long number, Optional<String> engine) {
        OrderInFull looked = look(number);
        OrderSet set = looked.set();
        CardSet whole = cards.get(number, order -> cards(looked, set)).replaced(beds.reserves());
        List<String> why = engine.map(looked::whyStale).orElseGet(looked::whyStale);
        return new Print(looked, engine.map(whole::ofEngine).orElse(whole), stamp(looked, why));
    }

    private CardSet cards(OrderInFull looked, OrderSet set) {
        long number = looked.revision().number();
        CardSet cards =
                CardAnalysis.of(looked.kit(), looked.revision().code() + " of order " + number, set.made(), set.way());
        if (!OrderText.write(OrderSet.of(cards, set.way())).equals(orders.text(number))) {
            throw new Refusal(
                    409,
                    "Other figures",
                    "This program works out other figures than order " + number
                            + " says, so nothing is printed. Propose a new order and see what changes.");
        }
        return cards;
    }

    /** What this device knows of a scanned sheet: never more than that. */
    ObjectNode scanned(SheetCode code) {
        OrderBook book = book();
        Kit kit = current.get().document().kit();
        String known =
                ", as known on this device at " + WHEN.format(clock.instant().atZone(ZoneId.of(kit.zone()))) + ".";
        Optional<OrderRevision> found = book.revisions().stream()
                .filter(revision ->
                        revision.number() == code.order() && revision.code().equals(code.check()))
                .findFirst();
        if (found.isEmpty()) {
            return Answer.object().put("says", "No order " + code.order() + " with the code " + code.check() + known);
        }
        OrderInFull order = look(book, code.order());
        boolean touched = order.set().engines().stream()
                .filter(code::isOf)
                .anyMatch(engine -> !order.whyStale(engine).isEmpty());
        String stale =
                order.standing() == OrderBook.Standing.IN_FORCE && touched ? "; numbers on that sheet are stale" : "";
        String says = "Order " + code.order() + " is " + order.standing().word() + stale + known;
        return Answer.object()
                .put("says", says)
                .put("order", code.order())
                .put("standing", order.standing().word());
    }

    /** What stands across a sheet of an order.
     *
     * @param why why numbers of the sheet are stale; empty where they stand
     */
    static Stamp stamp(OrderInFull looked, List<String> why) {
        long number = looked.revision().number();
        return switch (looked.standing()) {
            case PROPOSED -> Stamp.UNSIGNED;
            case SUPERSEDED, WITHDRAWN -> Stamp.past(number, looked.standing().word());
            case IN_FORCE -> inForce(looked, why);
        };
    }

    private static Stamp inForce(OrderInFull looked, List<String> why) {
        long number = looked.revision().number();
        OrderStep signature = looked.revision().signature().orElseThrow();
        LocalDate day = LocalDate.ofInstant(
                signature.mark().at(), ZoneId.of(looked.kit().zone()));
        return why.isEmpty()
                ? Stamp.inForce(number, signature.mark().who(), DAY.format(day))
                : Stamp.stale(number, shortly(why));
    }

    /** Reasons as they fit on a sheet; the order's own page has all of them. */
    static String shortly(List<String> why) {
        String first = String.join(" ", why.subList(0, Math.min(REASONS_ON_SHEET, why.size())));
        return why.size() <= REASONS_ON_SHEET ? first : first + " And " + (why.size() - REASONS_ON_SHEET) + " more.";
    }

    private Kit kitOf(OrderRevision revision) {
        return current.find(revision.kitVersion())
                .map(read -> read.document().kit())
                .orElseThrow(() -> Refused.unknown("kit revision"));
    }

    LocalDate today(Kit kit) {
        return LocalDate.ofInstant(clock.instant(), ZoneId.of(kit.zone()));
    }
}
