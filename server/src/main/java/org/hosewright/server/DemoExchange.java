package org.hosewright.server;

import java.time.Instant;
import java.util.Optional;
import org.hosewright.files.exchange.ExchangeBook;
import org.hosewright.files.exchange.ExchangeFile;
import org.hosewright.ledger.exchange.Arrival;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.Leaves;

/** What the invented neighbour, Aldwick Vale, handed to the invented company. */
final class DemoExchange {
    private static final String FILE = "aldwick-vale.exchange";

    private DemoExchange() {}

    /** Adds it where no neighbour is held. */
    static void fill(Leaves leaves, Act act) {
        if (!leaves.list(LeafKind.NEIGHBOUR).isEmpty()) {
            return;
        }
        byte[] file = Demo.bytes(FILE);
        Instant made = ExchangeFile.read(file, FILE).handover().issued();
        ExchangeBook book = new ExchangeBook(leaves);
        Arrival arrival = book.judge(file, FILE, Optional.empty(), made);
        book.keep(arrival, Optional.of(arrival.signed().fingerprint()), made, act);
    }
}
