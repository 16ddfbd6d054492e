package org.hosewright.files.readings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;

/** From cells to readings: units, names and plain sense, each error with its row and column. */
public final class ReadingParser {
    private ReadingParser() {}

    /** All readings of a table.
     *
     * @param source the file's name, for error messages
     * @throws InvalidInput the first cell that cannot be used
     */
    public static List<Reading> parse(ReadingsTable table, Kit kit, String source) {
        String top = source + ", line 1";
        Heads heads = Heads.of(table.columns(), top);
        heads.checkRequired(top);
        if (table.rows().isEmpty()) {
            throw new InvalidInput("readings", "", "at least one row below the heads", source);
        }
        List<Reading> readings = new ArrayList<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        SharedLays lays = new SharedLays();
        for (ReadingsTable.Row row : table.rows()) {
            Cells cells = new Cells(row, heads, source);
            Reading reading = new RowReader(cells, kit).reading();
            Integer before = lines.put(reading.id(), row.line());
            if (before != null) {
                String allowed =
                        "a name of its own for each reading" + (before > 0 ? "; line " + before + " has this one" : "");
                throw cells.refused(Column.READING, "a reading's name given twice", allowed);
            }
            lays.check(reading, cells);
            readings.add(reading);
        }
        return readings;
    }

    /** One row, by itself.
     *
     * @throws InvalidInput the first cell that cannot be used
     */
    public static Reading parse(ReadingsTable.Row row, Kit kit, String source) {
        Heads heads = Heads.of(row.cells().keySet(), source);
        return new RowReader(new Cells(row, heads, source), kit).reading();
    }
}
