package org.hosewright.store;

import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.RulingRecord;
import org.jdbi.v3.core.Handle;

/** The inserts of one act on one drill. */
final class DrillWrites {
    private final Writing writing;
    private final Handle handle;
    private final String drillId;

    DrillWrites(Writing writing, String drillId) {
        this.writing = writing;
        this.handle = writing.handle();
        this.drillId = drillId;
    }

    void drill() {
        handle.createUpdate("insert into drill (id, version, head_version) values (:id, 1, 1)")
                .bind("id", drillId)
                .execute();
    }

    /** Counts the drill's version up by one. */
    long nextVersion() {
        handle.execute("update drill set version = version + 1 where id = ?", drillId);
        return number("select version from drill where id = :id");
    }

    void head(DrillHead head, long version) {
        handle.createUpdate("insert into drill_head (drill_id, version, name, night, column_names, entry)"
                        + " values (:drill, :version, :name, :night, :columns, :entry)")
                .bind("drill", drillId)
                .bind("version", version)
                .bind("name", head.name())
                .bind("night", head.date().toString())
                .bind("columns", CellText.of(head.columns()))
                .bind("entry", writing.mark().entry())
                .execute();
    }

    void nextHead(DrillHead head) {
        handle.execute("update drill set head_version = head_version + 1 where id = ?", drillId);
        head(head, number("select head_version from drill where id = :id"));
    }

    void row(DrillRow row, long place) {
        handle.createUpdate("insert into drill_row (id, drill_id, place, version) values (:id, :drill, :place, 1)")
                .bind("id", row.id())
                .bind("drill", drillId)
                .bind("place", place)
                .execute();
        revision(row);
    }

    void nextRevision(DrillRow row) {
        handle.execute("update drill_row set version = ? where id = ?", row.version(), row.id());
        revision(row);
    }

    void ruling(RulingRecord ruling, long place) {
        handle.createUpdate("insert into ruling (id, drill_id, row_id, row_version, place, verdict, reason, entry)"
                        + " values (:id, :drill, :row, :version, :place, :verdict, :reason, :entry)")
                .bind("id", ruling.id())
                .bind("drill", drillId)
                .bind("row", ruling.rowId())
                .bind("version", ruling.rowVersion())
                .bind("place", place)
                .bind("verdict", ruling.verdict().word())
                .bind("reason", ruling.reason())
                .bind("entry", writing.mark().entry())
                .execute();
    }

    void acceptance(long drillVersion, long kitVersion) {
        handle.createUpdate("insert into acceptance (drill_id, drill_version, kit_version, entry)"
                        + " values (:drill, :version, :kit, :entry)")
                .bind("drill", drillId)
                .bind("version", drillVersion)
                .bind("kit", kitVersion)
                .bind("entry", writing.mark().entry())
                .execute();
    }

    private void revision(DrillRow row) {
        handle.createUpdate("insert into drill_row_revision (row_id, version, cells, removed, entry)"
                        + " values (:row, :version, :cells, :removed, :entry)")
                .bind("row", row.id())
                .bind("version", row.version())
                .bind("cells", CellText.of(row.cells()))
                .bind("removed", row.removed() ? 1L : 0L)
                .bind("entry", writing.mark().entry())
                .execute();
    }

    private long number(String query) {
        return handle.createQuery(query).bind("id", drillId).mapTo(Long.class).one();
    }
}
