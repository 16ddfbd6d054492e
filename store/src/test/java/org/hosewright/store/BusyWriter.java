package org.hosewright.store;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.CRC32;
import org.hosewright.ledger.drill.Accepting;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.DrillSaving;
import org.hosewright.ledger.drill.Drills.Seen;
import org.hosewright.ledger.drill.RulingRecord.Verdict;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.KitSaving;

/** A process that writes to a store without end, from three threads, and says what was acknowledged.
 *
 * <p>Lines: "kit VERSION ENTRY SUM", "row ID VERSION ENTRY SUM" and those of {@link BusyOrders} and {@link BusyLeaves},
 * written after the store has answered.
 */
final class BusyWriter implements Runnable {
    private static final int THREADS = 3;
    private static final List<String> COLUMNS = List.of("reading", "pump [psi]", "tip [psi]");

    private final Store store;
    private final Random random;
    private final Act act;
    private final BusyOrders orders;
    private final BusyLeaves leaves;

    private BusyWriter(Store store, Random random, String who) {
        this.store = store;
        this.random = random;
        this.act = new Act(who, "under load");
        this.orders = new BusyOrders(store, random, act);
        this.leaves = new BusyLeaves(store, random, act);
    }

    /** Takes the folder and a seed. */
    public static void main(String[] arguments) {
        Store store = Store.open(Path.of(arguments[0]));
        say("open");
        for (int i = 0; i < THREADS; i++) {
            var random = new Random(Long.parseLong(arguments[1]) + i);
            new Thread(new BusyWriter(store, random, "writer " + i)).start();
        }
    }

    @Override
    public void run() {
        saveKit();
        while (true) {
            DrillRecord drill =
                    store.drills().create(new DrillHead("Load", LocalDate.of(2026, 5, 12), COLUMNS), rows(5), act);
            drill.rows().forEach(BusyWriter::acknowledge);
            for (int i = 0; i < 12; i++) {
                drill = change(drill);
                other();
            }
            saveKit();
            accept(drill);
        }
    }

    /** What others do at the station meanwhile: orders on their way to the rigs, walks and sheets kept. */
    private void other() {
        switch (random.nextInt(6)) {
            case 0 -> orders.order(kitVersion());
            case 1, 2 -> leaves.keep();
            default -> {}
        }
    }

    private DrillRecord change(DrillRecord drill) {
        List<DrillChange> changes = new ArrayList<>();
        rows(random.nextInt(3)).forEach(cells -> changes.add(new DrillChange.AddRow(cells)));
        for (DrillRow row : drill.rows()) {
            if (random.nextInt(3) == 0) {
                changes.add(changeOf(row));
            }
        }
        if (changes.isEmpty()) {
            return drill;
        }
        DrillRecord saved = ((DrillSaving.Saved) store.drills().change(drill.id(), changes, act)).drill();
        long entry =
                saved.rows().stream().mapToLong(row -> row.mark().entry()).max().orElseThrow();
        saved.rows().stream().filter(row -> row.mark().entry() == entry).forEach(BusyWriter::acknowledge);
        return saved;
    }

    private DrillChange changeOf(DrillRow row) {
        return switch (random.nextInt(4)) {
            case 0 -> new DrillChange.RemoveRow(row.id(), row.version());
            case 1 -> new DrillChange.Rule(row.id(), row.version(), Verdict.SET_ASIDE, "load");
            default -> new DrillChange.EditRow(row.id(), row.version(), rows(1).get(0));
        };
    }

    private long kitVersion() {
        return store.kits().findLatest().map(KitRevision::version).orElse(0L);
    }

    private void saveKit() {
        long version = kitVersion();
        if (store.kits().save(kitText(), version, act) instanceof KitSaving.Saved saved) {
            acknowledge(saved.revision());
        }
    }

    private void accept(DrillRecord drill) {
        long version = kitVersion();
        var seen = new Seen(drill.id(), drill.version());
        if (store.drills().accept(seen, kitText(), version, act) instanceof Accepting.Accepted accepted) {
            acknowledge(accepted.kit());
        }
    }

    private List<Map<String, String>> rows(int count) {
        var rows = new ArrayList<Map<String, String>>();
        for (int i = 0; i < count; i++) {
            var cells = new LinkedHashMap<String, String>();
            COLUMNS.forEach(column -> cells.put(column, Integer.toString(random.nextInt(300))));
            rows.add(cells);
        }
        return rows;
    }

    /** Some tens of kilobytes, so that a kit spans many pages and the log is moved into the file now and then. */
    private String kitText() {
        return "# a line of a kit in use\n".repeat(500 + random.nextInt(2500)) + random.nextLong();
    }

    private static void acknowledge(KitRevision kit) {
        say("kit " + kit.version() + " " + kit.mark().entry() + " " + sum(kit.text()));
    }

    private static void acknowledge(DrillRow row) {
        say("row " + row.id() + " " + row.version() + " " + row.mark().entry() + " " + sum(row));
    }

    static long sum(DrillRow row) {
        return sum(row.cells() + " " + row.removed());
    }

    static long sum(String text) {
        var sum = new CRC32();
        sum.update(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return sum.getValue();
    }

    static void say(String line) {
        byte[] bytes = (line + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8);
        System.out.write(bytes, 0, bytes.length);
        System.out.flush();
    }
}
