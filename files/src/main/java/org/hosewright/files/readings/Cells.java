package org.hosewright.files.readings;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.Unit;

/** The cells of one row, each refused with its row and column where it cannot be meant. */
final class Cells {
    private static final Pattern NUMBER = Pattern.compile("[-+\u2212]?[0-9]*\\.?[0-9]+|[-+\u2212]?[0-9]+\\.");

    private final ReadingsTable.Row row;
    private final Heads heads;
    private final String source;

    Cells(ReadingsTable.Row row, Heads heads, String source) {
        this.row = row;
        this.heads = heads;
        this.source = source;
    }

    /** The text under a column; empty where nothing stands or there is no such column. */
    Optional<String> find(Column column) {
        return heads.find(column).map(head -> row.cell(head.text())).filter(text -> !text.isEmpty());
    }

    /** The text under a column that must have one.
     *
     * @param allowed what would do
     */
    String get(Column column, String allowed) {
        return find(column).orElseThrow(() -> refused(column, column.word(), allowed));
    }

    /** What a parser makes of a text, its errors placed at the column. */
    <T> T read(Column column, String text, Function<String, T> parse) {
        try {
            return parse.apply(text);
        } catch (InvalidInput e) {
            throw e.at(place(column));
        }
    }

    Optional<Pressure> pressure(Column column) {
        refuseNegative(column, column.word() + " pressure");
        return quantity(column).map(quantity -> (Pressure) quantity);
    }

    Optional<Flow> flow() {
        refuseNegative(Column.FLOW, "flow");
        return quantity(Column.FLOW).map(quantity -> (Flow) quantity);
    }

    Optional<Length> length(Column column) {
        return quantity(column).map(quantity -> (Length) quantity);
    }

    /** The error of a cell. */
    InvalidInput refused(Column column, String what, String allowed) {
        return new InvalidInput(what, find(column).orElse(""), allowed, place(column));
    }

    /** Where a cell stands: file, line, reading, column. */
    String place(Column column) {
        String line = row.line() > 0 ? ", line " + row.line() : "";
        String id =
                heads.find(Column.READING).map(head -> row.cell(head.text())).orElse("");
        String reading = id.isEmpty() || column == Column.READING ? "" : ", reading " + id;
        return source + line + reading + ", " + heads.name(column);
    }

    private Optional<Quantity> quantity(Column column) {
        Optional<String> text = find(column);
        return text.map(number -> {
            Unit unit = heads.find(column).flatMap(Heads.Head::unit).orElseThrow();
            refuseWords(column, number, unit);
            return read(column, number, all -> QuantityText.parse(unit, all));
        });
    }

    private void refuseNegative(Column column, String what) {
        String text = find(column).orElse("");
        if (text.startsWith("-") || text.startsWith("\u2212")) {
            throw refused(column, what, "0 or more");
        }
    }

    private void refuseWords(Column column, String number, Unit unit) {
        if (number.indexOf(',') >= 0) {
            String allowed = "a point for decimals (72.5) and no comma for thousands (1500)";
            throw refused(column, "a quantity with a comma", allowed);
        }
        if (!NUMBER.matcher(number).matches()) {
            String allowed = "a number of " + unit.symbol() + " without a unit: the head of the column names it";
            throw refused(column, column.word().toLowerCase(Locale.ROOT), allowed);
        }
    }
}
