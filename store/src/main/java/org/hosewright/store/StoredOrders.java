package org.hosewright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderStep;
import org.hosewright.ledger.order.Orders;
import org.jdbi.v3.core.Handle;

/** Ordered pressures as one row a set and one row a step. */
final class StoredOrders implements Orders {
    private static final String REVISIONS = "select o.number, o.code, o.kit_version, " + Marks.COLUMNS
            + " from order_revision o join history h on h.entry = o.entry order by o.number";
    private static final String STEPS = "select s.number, s.kind, s.engine, s.note, " + Marks.COLUMNS
            + " from order_step s join history h on h.entry = s.entry order by s.number, s.place";

    private final Transactions transactions;

    StoredOrders(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public OrderBook read() {
        return transactions.read(StoredOrders::book);
    }

    @Override
    public String text(long number) {
        return transactions
                .read(handle -> handle.createQuery("select order_text from order_revision where number = :number")
                        .bind("number", number)
                        .mapTo(String.class)
                        .findOne())
                .orElseThrow(() -> new InvalidInput(
                        "number of the order",
                        Long.toString(number),
                        "1 to " + read().revisions().size(),
                        ""));
    }

    @Override
    public OrderRevision propose(String code, long kitVersion, String text, Act act) {
        PlainText.check("order", text);
        return transactions.write(act, writing -> {
            if (StoredKits.findNewer(writing.handle(), kitVersion).isPresent()) {
                throw new InvalidInput(
                        "kit of the order",
                        "version " + kitVersion,
                        "the kit as it stands; it changed meanwhile, work the order out again",
                        "");
            }
            long number = book(writing.handle()).revisions().size() + 1L;
            writing.handle()
                    .createUpdate("insert into order_revision (number, code, kit_version, order_text, entry)"
                            + " values (:number, :code, :kit, :text, :entry)")
                    .bind("number", number)
                    .bind("code", code)
                    .bind("kit", kitVersion)
                    .bind("text", text)
                    .bind("entry", writing.mark().entry())
                    .execute();
            writing.note(Hat.ANALYST, "proposed order " + number, Subject.ORDER, Long.toString(number), 1);
            return new OrderRevision(number, code, kitVersion, writing.mark(), List.of());
        });
    }

    @Override
    public OrderRevision step(Step step, int signers, Act act) {
        PlainText.check("note", step.note());
        return transactions.write(act, writing -> {
            OrderBook before = book(writing.handle());
            before.require(step.number(), step.kind(), act.who(), signers);
            long place = before.get(step.number()).steps().size() + 1L;
            insert(writing, step, place);
            String engine = step.engine().isEmpty() ? "" : " for " + step.engine();
            writing.note(
                    step.kind().hat(),
                    step.kind().word() + " order " + step.number() + engine,
                    Subject.ORDER,
                    Long.toString(step.number()),
                    place + 1);
            return book(writing.handle()).get(step.number());
        });
    }

    private static void insert(Writing writing, Step step, long place) {
        writing.handle()
                .createUpdate("insert into order_step (number, place, kind, engine, note, entry)"
                        + " values (:number, :place, :kind, :engine, :note, :entry)")
                .bind("number", step.number())
                .bind("place", place)
                .bind("kind", step.kind().word())
                .bind("engine", step.engine())
                .bind("note", step.note())
                .bind("entry", writing.mark().entry())
                .execute();
    }

    private static OrderBook book(Handle handle) {
        Map<Long, List<OrderStep>> steps = steps(handle);
        return new OrderBook(handle.createQuery(REVISIONS)
                .map((row, context) -> new OrderRevision(
                        row.getLong("number"),
                        row.getString("code"),
                        row.getLong("kit_version"),
                        Marks.of(row),
                        steps.getOrDefault(row.getLong("number"), List.of())))
                .list());
    }

    /** The steps of every set, by its number. */
    private static Map<Long, List<OrderStep>> steps(Handle handle) {
        Map<Long, List<OrderStep>> steps = new LinkedHashMap<>();
        handle.createQuery(STEPS)
                .map((row, context) -> steps.computeIfAbsent(row.getLong("number"), number -> new ArrayList<>())
                        .add(new OrderStep(kind(row), row.getString("engine"), row.getString("note"), Marks.of(row))))
                .list();
        return steps;
    }

    private static OrderStep.Kind kind(ResultSet row) throws SQLException {
        String word = row.getString("kind");
        return Arrays.stream(OrderStep.Kind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new SQLException("unknown step " + word, "XX001"));
    }
}
