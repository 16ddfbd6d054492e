package org.hosewright.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collections;
import java.util.List;

/** All rows of one store, copied into another whose tables are fresh. */
final class TableCopy {
    private static final List<String> TABLES = List.of(
            "history",
            "history_head",
            "kit_revision",
            "drill",
            "drill_head",
            "drill_row",
            "drill_row_revision",
            "ruling",
            "acceptance",
            "order_revision",
            "order_step",
            "leaf",
            "leaf_version",
            "person",
            "person_version");
    private static final int BATCH = 500;

    private TableCopy() {}

    /** Copies every table, both connections inside a transaction that the caller began. */
    static void of(Connection from, Connection into) throws SQLException {
        try (var statement = into.createStatement()) {
            statement.execute("delete from history_head");
        }
        for (String table : TABLES) {
            copy(table, from, into);
        }
    }

    private static void copy(String table, Connection from, Connection into) throws SQLException {
        try (var select = from.createStatement()) {
            select.setFetchSize(BATCH);
            try (ResultSet rows = select.executeQuery("select * from " + table);
                    PreparedStatement insert = into.prepareStatement(insert(table, rows))) {
                int waiting = 0;
                while (rows.next()) {
                    for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                        insert.setObject(i, rows.getObject(i));
                    }
                    insert.addBatch();
                    waiting++;
                    if (waiting % BATCH == 0) {
                        insert.executeBatch();
                    }
                }
                insert.executeBatch();
            }
        }
    }

    private static String insert(String table, ResultSet rows) throws SQLException {
        int count = rows.getMetaData().getColumnCount();
        var names = new StringBuilder();
        for (int i = 1; i <= count; i++) {
            names.append(i == 1 ? "" : ", ").append(rows.getMetaData().getColumnName(i));
        }
        return "insert into " + table + " (" + names + ") values (" + String.join(", ", Collections.nCopies(count, "?"))
                + ")";
    }
}
