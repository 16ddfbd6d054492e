package org.hosewright.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillChange.AddRow;
import org.hosewright.ledger.drill.DrillChange.EditHead;
import org.hosewright.ledger.drill.DrillChange.EditRow;
import org.hosewright.ledger.drill.DrillChange.OnRow;
import org.hosewright.ledger.drill.DrillChange.RemoveRow;
import org.hosewright.ledger.drill.DrillChange.Rule;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.drill.RulingRecord;

/** One drill while an act changes it: each change is checked against the drill as it stands, then written. */
final class DrillEdit {
    private final Writing writing;
    private final DrillWrites writes;
    private final Map<String, DrillRow> rows = new LinkedHashMap<>();
    private DrillHead head;
    private long rulings;

    DrillEdit(Writing writing, DrillRecord drill) {
        this.writing = writing;
        this.writes = new DrillWrites(writing, drill.id());
        this.head = drill.head();
        this.rulings = drill.rulings().size();
        drill.rows().forEach(row -> rows.put(row.id(), row));
    }

    /** The changes that were made on something that has changed since. */
    List<DrillChange> listStale(List<DrillChange> changes) {
        return changes.stream().filter(this::isStale).toList();
    }

    void apply(List<DrillChange> changes) {
        changes.forEach(this::apply);
    }

    private boolean isStale(DrillChange change) {
        if (change instanceof OnRow onRow) {
            return row(onRow).version() != onRow.version();
        }
        return change instanceof EditHead edit && !edit.seen().equals(head);
    }

    private void apply(DrillChange change) {
        if (change instanceof AddRow add) {
            add(add.cells());
        } else if (change instanceof EditHead edit) {
            rewrite(edit.head());
        } else if (change instanceof EditRow edit) {
            check(edit.cells());
            revise(row(edit), edit.cells(), row(edit).removed());
        } else if (change instanceof Rule rule) {
            rule(rule);
        } else if (change instanceof OnRow onRow) {
            revise(row(onRow), row(onRow).cells(), onRow instanceof RemoveRow);
        }
    }

    private void add(Map<String, String> cells) {
        check(cells);
        var row = new DrillRow(writing.newId(), 1, cells, false, writing.mark());
        rows.put(row.id(), row);
        writes.row(row, rows.size());
    }

    private void revise(DrillRow row, Map<String, String> cells, boolean removed) {
        var next = new DrillRow(row.id(), row.version() + 1, cells, removed, writing.mark());
        rows.put(row.id(), next);
        writes.nextRevision(next);
    }

    private void rule(Rule rule) {
        PlainText.check("reason of the ruling", rule.reason());
        rulings++;
        var ruling = new RulingRecord(
                writing.newId(), rule.rowId(), rule.version(), rule.verdict(), rule.reason(), writing.mark());
        writes.ruling(ruling, rulings);
    }

    private void rewrite(DrillHead next) {
        PlainText.check(next);
        for (DrillRow row : rows.values()) {
            row.cells().forEach((column, text) -> {
                if (!text.isEmpty() && !next.columns().contains(column)) {
                    throw new InvalidInput(
                            "list of columns",
                            String.join(", ", next.columns()),
                            "one with '" + column + "' in it, which holds '" + text + "'",
                            "drill " + next.name());
                }
            });
        }
        head = next;
        writes.nextHead(next);
    }

    private void check(Map<String, String> cells) {
        cells.values().forEach(text -> PlainText.check("cell", text));
        Stream<String> unknown =
                cells.keySet().stream().filter(column -> !head.columns().contains(column));
        unknown.findFirst().ifPresent(column -> {
            throw new InvalidInput(
                    "column", column, "one of " + String.join(", ", head.columns()), "drill " + head.name());
        });
    }

    private DrillRow row(OnRow change) {
        DrillRow row = rows.get(change.rowId());
        if (row == null) {
            throw new InvalidInput("row", change.rowId(), "the id of a row of this drill", "drill " + head.name());
        }
        return row;
    }
}
