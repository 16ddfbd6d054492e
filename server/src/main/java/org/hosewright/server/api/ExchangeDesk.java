package org.hosewright.server.api;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.exchange.ExchangeBook;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.canonical.Digest;
import org.hosewright.ledger.exchange.Arrival;
import org.hosewright.ledger.exchange.Beside;
import org.hosewright.ledger.exchange.CompanyKey;
import org.hosewright.ledger.exchange.Fingerprint;
import org.hosewright.ledger.exchange.Handing;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.exchange.Neighbour;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.server.setup.Ports;

/** Where packages are handed to neighbours and neighbours' files are judged, compared and kept beside our own record. */
public final class ExchangeDesk {
    private final ExchangeBook book;
    private final OrderDesk orders;
    private final CurrentKit current;
    private final CompanyKey key;
    private final Clock clock;

    ExchangeDesk(Ports ports, OrderDesk orders, CurrentKit current, Clock clock) {
        this.book = new ExchangeBook(ports.leaves());
        this.orders = orders;
        this.current = current;
        this.key = ports.key();
        this.clock = clock;
    }

    /** A desk of its own over a record. */
    public static ExchangeDesk of(Ports ports, Clock clock) {
        var current = new CurrentKit(ports.kits());
        return new ExchangeDesk(
                ports, new OrderDesk(ports.orders(), current, new BedDesk(ports.leaves()), clock), current, clock);
    }

    /** A file that came, beside what is held and what is ours. */
    public record Looked(Arrival arrival, List<Beside> packages) {
        public Looked {
            packages = List.copyOf(packages);
        }
    }

    /** The company's fingerprint; its key is made at the first asking. */
    public Fingerprint fingerprint() {
        return Fingerprint.ofDigest(Digest.ofHex(key.publicKey()));
    }

    public Kit kit() {
        return current.get().document().kit();
    }

    public LocalDate today() {
        return orders.today(kit());
    }

    public Instant now() {
        return clock.instant();
    }

    /** What may be handed over: of the order in force; empty where there is none. */
    public Optional<Handing> findHanding() {
        OrderBook all = orders.book();
        return all.inForce().map(revision -> new Handing(orders.look(all, revision.number()), kit()));
    }

    /** Hands packages over.
     *
     * @param packages ids; empty for all that are ready
     * @param until the last day; a year from today where nobody says
     */
    public SignedHandover handOver(List<String> packages, Optional<LocalDate> until, Act act) {
        Handing handing = findHanding()
                .orElseThrow(() -> new InvalidInput("order in force", "", "a signed order; sign one first", ""));
        LocalDate last = until.orElseGet(() -> today().plusMonths(Handing.MONTHS));
        List<String> chosen = packages.isEmpty() ? handing.listReady() : packages;
        return book.handOver(handing.of(chosen, issue(), last), key, act);
    }

    /** Takes back all that was handed over. */
    public SignedHandover withdraw(Act act) {
        return book.handOver(Handing.withdrawal(kit(), issue(), act.why()), key, act);
    }

    /** Hands over under a new key from now on; said only where the old one is lost. */
    public void letGoOfKey(Act act) {
        book.letGoOfKey(act);
    }

    public Optional<SignedHandover> findHanded() {
        return book.findHanded();
    }

    public List<Neighbour> neighbours() {
        return book.list();
    }

    public Optional<Neighbour> findNeighbour(String id) {
        return book.find(id);
    }

    /** Judges a file that came and lays it beside ours; nothing is kept. */
    public Looked look(byte[] file, String source) {
        Arrival arrival = book.judge(file, source, Optional.of(fingerprint()), clock.instant());
        Optional<Handover> held = arrival.held().map(there -> there.last().handover());
        return new Looked(arrival, Beside.of(arrival.signed().handover(), held, own()));
    }

    /** What is held of a neighbour beside ours. */
    public List<Beside> beside(Neighbour neighbour) {
        return Beside.of(neighbour.last().handover(), Optional.empty(), own());
    }

    public LeafSaving keep(Arrival arrival, Optional<Fingerprint> told, Act act) {
        return book.keep(arrival, told, clock.instant(), act);
    }

    public LeafSaving takeOut(Neighbour neighbour, Act act) {
        return book.takeOut(neighbour, act);
    }

    private Beside.Own own() {
        OrderBook all = orders.book();
        Optional<OrderSet> set = all.inForce()
                .map(revision -> orders.look(all, revision.number()).set());
        return new Beside.Own(kit(), set);
    }

    private Instant issue() {
        return Handing.issue(
                clock.instant(), book.findHanded().map(last -> last.handover().issued()));
    }
}
