package org.hosewright.files.readings;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;

/** A readings file as typed: column heads and cells, nothing interpreted yet.
 *
 * @param columns heads as written, units in square brackets ("pump [psi]"), in the file's order
 * @param rows one a reading, in the order taken
 */
public record ReadingsTable(List<String> columns, List<Row> rows) {
    public ReadingsTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** An error about a reading ("reading 7"), standing at the line that the reading is on.
     *
     * @param source the file's name
     */
    public InvalidInput placed(InvalidInput error, String source) {
        for (Row row : rows) {
            String reading = "reading " + row.cell(Column.READING.word());
            boolean here = error.where().equals(reading) || error.where().startsWith(reading + ",");
            if (here && row.line() > 0) {
                return error.at(source + ", line " + row.line());
            }
        }
        return error.at(source);
    }

    /** One row as typed.
     *
     * @param line line of the file it begins on; 0 for a row that was typed on a page
     * @param cells text by column head; an empty cell may be left out
     */
    public record Row(int line, Map<String, String> cells) {
        public Row {
            cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
        }

        /** The text under a head, trimmed; empty where nothing was written. */
        public String cell(String column) {
            return cells.getOrDefault(column, "").strip();
        }
    }
}
