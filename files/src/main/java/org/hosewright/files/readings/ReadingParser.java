package org.hosewright.files.readings;

import java.util.List;
import org.hosewright.evidence.night.Reading;
import org.hosewright.ledger.kit.Kit;

/** From cells to readings: units, names and plain sense, each error with its row and column. */
public final class ReadingParser {
    private ReadingParser() {}

    /** All readings of a table.
     *
     * @param source the file's name, for error messages
     * @throws org.hosewright.hydraulics.error.InvalidInput the first cell that cannot be used
     */
    public static List<Reading> parse(ReadingsTable table, Kit kit, String source) {
        throw new UnsupportedOperationException();
    }

    /** One row, by itself.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput the first cell that cannot be used
     */
    public static Reading parse(ReadingsTable.Row row, Kit kit, String source) {
        throw new UnsupportedOperationException();
    }
}
