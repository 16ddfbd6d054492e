package org.hosewright.server.api;

import org.hosewright.files.readings.ReadingsTable;

/** What the cells of a row hold, by the columns' names without their units. */
final class Cells {
    private Cells() {}

    /** True where a row says enough to be a reading; until then it is still being typed. */
    static boolean complete(ReadingsTable.Row row) {
        boolean length = has(row, "length") || cell(row, "hose").matches(".*[+x].*");
        boolean shown = has(row, "pump")
                && (has(row, "tip") || has(row, "flow") || cell(row, "setting").equals("shut"));
        return length && shown && has(row, "discharge") && has(row, "hose") && has(row, "nozzle");
    }

    private static boolean has(ReadingsTable.Row row, String name) {
        return !cell(row, name).isEmpty();
    }

    private static String cell(ReadingsTable.Row row, String name) {
        return row.cells().keySet().stream()
                .filter(column -> base(column).equals(name))
                .map(row::cell)
                .findFirst()
                .orElse("");
    }

    private static String base(String column) {
        int unit = column.indexOf('[');
        return (unit < 0 ? column : column.substring(0, unit)).strip();
    }
}
