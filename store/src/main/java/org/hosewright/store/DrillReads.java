package org.hosewright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.hosewright.ledger.drill.AcceptanceRecord;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.DrillSummary;
import org.hosewright.ledger.drill.RulingRecord;
import org.hosewright.ledger.drill.RulingRecord.Verdict;
import org.jdbi.v3.core.Handle;

/** Drills read back from their tables, inside a transaction of the caller. */
final class DrillReads {
    private static final String HEAD = "select d.id, d.version as drill_version, t.name, t.night, t.column_names"
            + " from drill d join drill_head t on t.drill_id = d.id and t.version = d.head_version ";
    private static final String ROW = "select r.id, v.version as row_version, v.cells, v.removed, " + Marks.COLUMNS
            + " from drill_row r join drill_row_revision v on v.row_id = r.id"
            + " join history h on h.entry = v.entry ";
    private static final String RULING = "select r.id, r.row_id, r.row_version, r.verdict, r.reason, " + Marks.COLUMNS
            + " from ruling r join history h on h.entry = r.entry where r.drill_id = :id order by r.place";
    private static final String ACCEPTANCE = "select a.drill_version, a.kit_version, " + Marks.COLUMNS
            + " from acceptance a join history h on h.entry = a.entry"
            + " where a.drill_id = :id order by a.drill_version";
    private static final String SUMMARY = """
            select d.id, d.version as drill_version, t.name, t.night,
              (select count(*) from drill_row r
                 join drill_row_revision v on v.row_id = r.id and v.version = r.version
                 where r.drill_id = d.id and v.removed = 0) as standing,
              (select max(a.kit_version) from acceptance a where a.drill_id = d.id) as kit_version
            from drill d join drill_head t on t.drill_id = d.id and t.version = d.head_version
            """;

    private DrillReads() {}

    static Optional<DrillRecord> find(Handle handle, String id) {
        return handle.createQuery(HEAD + "where d.id = :id")
                .bind("id", id)
                .map((row, context) -> new DrillRecord(
                        id,
                        row.getLong("drill_version"),
                        head(row),
                        rows(handle, id),
                        rulings(handle, id),
                        acceptances(handle, id)))
                .findOne();
    }

    static List<DrillSummary> summaries(Handle handle) {
        return handle.createQuery(SUMMARY).map((row, context) -> summary(row)).list();
    }

    static List<DrillRow> revisions(Handle handle, String rowId) {
        return handle.createQuery(ROW + "where r.id = :id order by v.version")
                .bind("id", rowId)
                .map((row, context) -> row(row))
                .list();
    }

    private static List<DrillRow> rows(Handle handle, String drillId) {
        return handle.createQuery(ROW + "where r.drill_id = :id and v.version = r.version order by r.place")
                .bind("id", drillId)
                .map((row, context) -> row(row))
                .list();
    }

    private static List<RulingRecord> rulings(Handle handle, String drillId) {
        return handle.createQuery(RULING)
                .bind("id", drillId)
                .map((row, context) -> ruling(row))
                .list();
    }

    private static List<AcceptanceRecord> acceptances(Handle handle, String drillId) {
        return handle.createQuery(ACCEPTANCE)
                .bind("id", drillId)
                .map((row, context) ->
                        new AcceptanceRecord(row.getLong("drill_version"), row.getLong("kit_version"), Marks.of(row)))
                .list();
    }

    private static DrillHead head(ResultSet row) throws SQLException {
        return new DrillHead(
                row.getString("name"),
                LocalDate.parse(row.getString("night")),
                CellText.columns(row.getString("column_names")));
    }

    private static DrillRow row(ResultSet row) throws SQLException {
        return new DrillRow(
                row.getString("id"),
                row.getLong("row_version"),
                CellText.cells(row.getString("cells")),
                row.getLong("removed") != 0,
                Marks.of(row));
    }

    private static RulingRecord ruling(ResultSet row) throws SQLException {
        String word = row.getString("verdict");
        Verdict verdict = Arrays.stream(Verdict.values())
                .filter(each -> each.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new SQLException("unknown ruling " + word, "XX001"));
        return new RulingRecord(
                row.getString("id"),
                row.getString("row_id"),
                row.getLong("row_version"),
                verdict,
                row.getString("reason"),
                Marks.of(row));
    }

    private static DrillSummary summary(ResultSet row) throws SQLException {
        long kitVersion = row.getLong("kit_version");
        OptionalLong acceptedInto = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(kitVersion);
        return new DrillSummary(
                row.getString("id"),
                row.getLong("drill_version"),
                row.getString("name"),
                LocalDate.parse(row.getString("night")),
                row.getLong("standing"),
                acceptedInto);
    }
}
