package org.hosewright.ledger.drill;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A test night as kept: raw rows, rulings, acceptances. Nothing of it is ever deleted.
 *
 * @param id UUIDv7
 * @param version from 1, one more with each change to anything of the drill
 * @param head name, date, columns
 * @param rows in the order of the table, removed ones among them
 * @param rulings in the order given
 * @param acceptances in the order given
 */
public record DrillRecord(
        String id,
        long version,
        DrillHead head,
        List<DrillRow> rows,
        List<RulingRecord> rulings,
        List<AcceptanceRecord> acceptances) {
    public DrillRecord {
        rows = List.copyOf(rows);
        rulings = List.copyOf(rulings);
        acceptances = List.copyOf(acceptances);
    }

    public String name() {
        return head.name();
    }

    public LocalDate date() {
        return head.date();
    }

    public List<String> columns() {
        return head.columns();
    }

    /** The rows in the table: those not removed. */
    public List<DrillRow> listStanding() {
        return rows.stream().filter(row -> !row.removed()).toList();
    }

    public Optional<DrillRow> findRow(String rowId) {
        return rows.stream().filter(row -> row.id().equals(rowId)).findFirst();
    }

    /** The ruling that counts for a row; empty where there is none or the last took the earlier ones back. */
    public Optional<RulingRecord> findRuling(String rowId) {
        return rulings.stream()
                .filter(ruling -> ruling.rowId().equals(rowId))
                .reduce((earlier, later) -> later)
                .filter(ruling -> ruling.verdict() != RulingRecord.Verdict.AS_JUDGED);
    }

    /** The last acceptance. */
    public Optional<AcceptanceRecord> findAcceptance() {
        return acceptances.isEmpty() ? Optional.empty() : Optional.of(acceptances.get(acceptances.size() - 1));
    }

    public boolean accepted() {
        return !acceptances.isEmpty();
    }

    /** Whether anything was changed after the last acceptance. */
    public boolean changedSinceAccepted() {
        return findAcceptance().filter(last -> last.drillVersion() < version).isPresent();
    }
}
