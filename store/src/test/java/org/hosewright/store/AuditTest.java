package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.Drills.Seen;
import org.hosewright.ledger.drill.RulingRecord.Verdict;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Audit;
import org.hosewright.ledger.order.OrderStep.Kind;
import org.hosewright.ledger.order.Orders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is changed in the record behind its back, the audit finds it and names the first entry it spoilt. */
final class AuditTest {
    private static final Act ACT = new Act("Chief", "because");
    private static final List<String> RECORDED = List.of(
            "history",
            "kit_revision",
            "drill_head",
            "drill_row_revision",
            "ruling",
            "acceptance",
            "order_revision",
            "order_step");

    @TempDir
    Path folder;

    @BeforeEach
    void fill() {
        try (Store store = Store.open(folder)) {
            store.kits().save("kit", 0, ACT);
            var head = new DrillHead("May", LocalDate.of(2026, 5, 12), List.of("pump"));
            DrillRecord drill = store.drills().create(head, List.of(Map.of("pump", "1"), Map.of("pump", "2")), ACT);
            String row = drill.rows().get(0).id();
            store.drills().change(drill.id(), List.of(new DrillChange.Rule(row, 1, Verdict.USE, "sure")), ACT);
            store.drills().accept(new Seen(drill.id(), 2), "kit", 1, ACT);
            store.orders().propose("code", 2, "{}", ACT);
            store.orders().step(new Orders.Step(1, Kind.SIGNED, "", ""), 1, ACT);
            store.orders().step(new Orders.Step(1, Kind.REPORTED, "engine-41", "wrong tag"), 1, ACT);
        }
    }

    @Test
    void untouchedRecordHolds() {
        Audit audit = audit();
        assertThat(audit.holds()).isTrue();
        assertThat(audit.entries()).isEqualTo(7);
        assertThat(audit.last()).matches("[0-9a-f]{64}");
    }

    @Test
    void anyCellChangedIsFoundAtItsEntryHolds() throws SQLException {
        int tried = 0;
        for (String table : RECORDED) {
            for (Cell cell : cells(table)) {
                if (cell.column().equals("entry")) {
                    continue;
                }
                String was = value(cell);
                set(cell, "'changed'");
                assertThat(audit().broken()).as("%s", cell).isPresent();
                assertThat(audit().broken().orElseThrow().entry())
                        .as("%s", cell)
                        .isEqualTo(cell.entry());
                set(cell, was);
                assertThat(audit().holds()).as("%s put back", cell).isTrue();
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(100);
    }

    @Test
    void entryTakenOutIsFoundHolds() throws SQLException {
        execute("pragma foreign_keys = off");
        execute("delete from history where entry = 3");
        assertThat(audit().broken()).contains(new Audit.Broken(3, "The entry is missing."));
    }

    @Test
    void endCutOffShowsInTheLastHashHolds() throws SQLException {
        String before = audit().last();
        execute("delete from order_step where entry = 7");
        execute("delete from history where entry = 7");
        execute("update history_head set last = 6");
        assertThat(audit().holds()).as("a shorter chain is whole in itself").isTrue();
        assertThat(audit().last()).isNotEqualTo(before);
    }

    private record Cell(String table, long rowId, String column, long entry) {}

    private Audit audit() {
        try (Store store = Store.open(folder)) {
            return store.history().audit();
        }
    }

    private List<Cell> cells(String table) throws SQLException {
        var cells = new ArrayList<Cell>();
        try (Connection connection = open();
                var statement = connection.createStatement();
                var rows = statement.executeQuery("select rowid as row_id, t.* from " + table + " t")) {
            while (rows.next()) {
                for (int i = 2; i <= rows.getMetaData().getColumnCount(); i++) {
                    String column = rows.getMetaData().getColumnName(i);
                    cells.add(new Cell(table, rows.getLong("row_id"), column, rows.getLong("entry")));
                }
            }
        }
        return cells;
    }

    private String value(Cell cell) throws SQLException {
        try (Connection connection = open();
                var statement = connection.createStatement();
                var row = statement.executeQuery("select quote(" + cell.column() + ") from " + cell.table()
                        + " where rowid = " + cell.rowId())) {
            row.next();
            return row.getString(1);
        }
    }

    private void set(Cell cell, String value) throws SQLException {
        execute("update " + cell.table() + " set " + cell.column() + " = " + value + " where rowid = " + cell.rowId());
    }

    private void execute(String statement) throws SQLException {
        try (Connection connection = open();
                var update = connection.createStatement()) {
            update.execute(statement);
        }
    }

    private Connection open() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + Sqlite.file(folder));
    }
}
