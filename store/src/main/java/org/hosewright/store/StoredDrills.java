package org.hosewright.store;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.Accepting;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.DrillSaving;
import org.hosewright.ledger.drill.DrillSummary;
import org.hosewright.ledger.drill.Drills;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.kit.KitRevision;
import org.jdbi.v3.core.Handle;

/** Drills as rows, each change of a row a revision of it. */
final class StoredDrills implements Drills {
    private static final Comparator<DrillSummary> LATEST_FIRST = Comparator.comparing(DrillSummary::date)
            .thenComparing(DrillSummary::id)
            .reversed();

    private final Transactions transactions;

    StoredDrills(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public DrillRecord create(DrillHead head, List<Map<String, String>> rows, Act act) {
        PlainText.check(head);
        return transactions.write(act, writing -> {
            String id = writing.newId();
            var writes = new DrillWrites(writing, id);
            writes.drill();
            writes.head(head, 1);
            var empty = new DrillRecord(id, 1, head, List.of(), List.of(), List.of());
            new DrillEdit(writing, empty)
                    .apply(rows.stream()
                            .<DrillChange>map(DrillChange.AddRow::new)
                            .toList());
            writing.note(
                    Hat.RECORDER, "started the drill with " + DrillWords.readings(rows.size()), Subject.DRILL, id, 1);
            return drill(writing.handle(), id);
        });
    }

    @Override
    public Optional<DrillRecord> findDrill(String id) {
        return transactions.read(handle -> DrillReads.find(handle, id));
    }

    @Override
    public List<DrillSummary> listDrills() {
        return transactions.read(DrillReads::summaries).stream()
                .sorted(LATEST_FIRST)
                .toList();
    }

    @Override
    public DrillSaving change(String drillId, List<DrillChange> changes, Act act) {
        if (changes.isEmpty()) {
            throw new InvalidInput("list of changes", "", "at least one change", "");
        }
        return transactions.write(act, writing -> {
            DrillRecord stored = drill(writing.handle(), drillId);
            var edit = new DrillEdit(writing, stored);
            List<DrillChange> stale = edit.listStale(changes);
            if (!stale.isEmpty()) {
                return writing.turnBack(new DrillSaving.Conflict(stored, stale));
            }
            edit.apply(changes);
            long version = new DrillWrites(writing, drillId).nextVersion();
            writing.note(DrillChange.hat(changes), DrillWords.of(changes), Subject.DRILL, drillId, version);
            return new DrillSaving.Saved(drill(writing.handle(), drillId));
        });
    }

    @Override
    public Accepting accept(Seen seen, String kitText, long kitBasedOn, Act act) {
        PlainText.check("kit", kitText);
        return transactions.write(act, writing -> {
            DrillRecord stored = drill(writing.handle(), seen.drillId());
            if (stored.version() != seen.version()) {
                return writing.turnBack(new Accepting.DrillChanged(stored));
            }
            Optional<KitRevision> newer = StoredKits.findNewer(writing.handle(), kitBasedOn);
            if (newer.isPresent()) {
                return writing.turnBack(new Accepting.KitChanged(newer.get(), kitText));
            }
            return takeOver(writing, seen.drillId(), StoredKits.append(writing, kitText, kitBasedOn + 1));
        });
    }

    @Override
    public List<DrillRow> listRevisions(String rowId) {
        return transactions.read(handle -> DrillReads.revisions(handle, rowId));
    }

    private static Accepting takeOver(Writing writing, String drillId, KitRevision kit) {
        var writes = new DrillWrites(writing, drillId);
        long version = writes.nextVersion();
        writes.acceptance(version, kit.version());
        writing.note(Hat.ANALYST, "accepted the numbers into kit " + kit.version(), Subject.DRILL, drillId, version);
        return new Accepting.Accepted(drill(writing.handle(), drillId), kit);
    }

    private static DrillRecord drill(Handle handle, String id) {
        return DrillReads.find(handle, id)
                .orElseThrow(() -> new InvalidInput("drill", id, "the id of a drill in this store", ""));
    }
}
