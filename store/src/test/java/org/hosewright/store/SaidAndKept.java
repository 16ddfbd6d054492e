package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.Mark;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderRevision;

/** What busy writers said they had saved, beside what a store holds. */
final class SaidAndKept {
    private final Store store;
    private final String round;
    private final OrderBook orders;
    private final Map<Long, Entry> history = new HashMap<>();

    SaidAndKept(Store store, String round) {
        this.store = store;
        this.round = round;
        this.orders = store.orders().read();
        store.history()
                .listLatest(Integer.MAX_VALUE)
                .forEach(each -> history.put(each.mark().entry(), each));
    }

    /** The entry that a line speaks of; 0 for a line that speaks of none. */
    static long entry(String line) {
        String[] words = line.split(" ", -1);
        return switch (words[0]) {
            case "kit", "order" -> Long.parseLong(words[2]);
            case "row" -> Long.parseLong(words[3]);
            case "leaf" -> Long.parseLong(words[4]);
            default -> 0;
        };
    }

    /** Checks one line. */
    void check(String line) {
        String[] words = line.split(" ", -1);
        switch (words[0]) {
            case "kit" -> kit(words);
            case "row" -> row(words);
            case "order" -> order(words);
            case "leaf" -> leaf(words);
            default -> assertThat(line).isEqualTo("open");
        }
    }

    private void kit(String[] words) {
        KitRevision kit = store.kits().findRevision(Long.parseLong(words[1])).orElseThrow();
        same(kit.mark().entry() + " " + BusyWriter.sum(kit.text()), words, 2);
        noted(kit.mark());
    }

    private void row(String[] words) {
        int version = Integer.parseInt(words[2]);
        List<DrillRow> revisions = store.drills().listRevisions(words[1]);
        assertThat(revisions).as(round).hasSizeGreaterThanOrEqualTo(version);
        DrillRow row = revisions.get(version - 1);
        same(row.mark().entry() + " " + BusyWriter.sum(row), words, 3);
        noted(row.mark());
    }

    private void order(String[] words) {
        long entry = Long.parseLong(words[2]);
        OrderRevision revision = orders.get(Long.parseLong(words[1]));
        same(entry + " " + BusyOrders.sum(revision, store.orders().text(revision.number()), entry), words, 2);
    }

    private void leaf(String[] words) {
        Leaf leaf = store.leaves()
                .findVersion(LeafKind.valueOf(words[1]), words[2], Long.parseLong(words[3]))
                .orElseThrow();
        same(leaf.mark().entry() + " " + BusyLeaves.sum(leaf), words, 4);
        noted(leaf.mark());
    }

    /** Said or not: every set is whole, and each of its steps and of the history's entries about it has the other. */
    void everyOrderIsWhole() {
        for (OrderRevision revision : orders.revisions()) {
            assertThat(revision.code())
                    .as(round)
                    .isEqualTo(BusyOrders.code(store.orders().text(revision.number())));
            noted(revision.mark());
            revision.steps().forEach(step -> noted(step.mark()));
            List<Long> noted =
                    store
                            .history()
                            .listAbout(Subject.ORDER, Long.toString(revision.number()), Integer.MAX_VALUE)
                            .stream()
                            .map(entry -> entry.mark().entry())
                            .sorted()
                            .toList();
            assertThat(noted).as(round).hasSize(1 + revision.steps().size());
        }
        long proposals = history.values().stream()
                .filter(entry -> entry.subject() == Subject.ORDER && entry.version() == 1)
                .count();
        assertThat(orders.revisions()).as(round).hasSize((int) proposals);
    }

    /** Said or not: no leaf is cut off. */
    void everyLeafIsWhole() {
        for (LeafKind kind : BusyLeaves.KINDS) {
            assertThat(store.leaves().listWhole(kind)).as(round).allMatch(BusyLeaves::isWhole);
        }
    }

    private void same(String kept, String[] words, int from) {
        assertThat(kept).as(round).isEqualTo(words[from] + " " + words[from + 1]);
    }

    private void noted(Mark mark) {
        assertThat(history.get(mark.entry()).mark()).as(round).isEqualTo(mark);
    }
}
