package org.hosewright.files.readings;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.hosewright.hydraulics.error.InvalidInput;

/** A readings file, RFC 4180, in and out. */
public final class ReadingsFile {
    private static final String FORM = "commas between cells and a point for decimals, one head for each column";
    private static final Pattern DIGIT = Pattern.compile("[0-9]{1,4}");
    private static final int MOST_COLUMNS = 100;
    private static final int MOST_ROWS = 10_000;

    private ReadingsFile() {}

    /** The cells of a readings file.
     *
     * @param csv the text
     * @param source the file's name, for error messages
     * @throws InvalidInput it is not a readings table
     */
    public static ReadingsTable read(String csv, String source) {
        String text = csv.startsWith("\uFEFF") ? csv.substring(1) : csv;
        refuseSeparator(text, source);
        long line = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), CSVFormat.RFC4180)) {
            List<String> columns = List.of();
            List<ReadingsTable.Row> rows = new ArrayList<>();
            for (CSVRecord record : parser) {
                if (!isBlank(record)) {
                    if (columns.isEmpty()) {
                        columns = heads(record, source + ", line " + line);
                    } else {
                        rows.add(row(record, columns, (int) line, source));
                    }
                }
                line = parser.getCurrentLineNumber() + 1;
                check(rows.size(), source);
            }
            if (columns.isEmpty()) {
                throw new InvalidInput("content", "", "a line of column heads, then one row a reading", source);
            }
            return new ReadingsTable(columns, rows);
        } catch (UncheckedIOException | IOException | IllegalStateException e) {
            throw new InvalidInput(
                    "quotes", "\"", "each quoted cell closed, quotes within it doubled", source + ", line " + line);
        }
    }

    /** The text of a table, which reads back as the same table. */
    public static String write(ReadingsTable table) {
        StringBuilder text = new StringBuilder();
        line(text, table.columns());
        for (ReadingsTable.Row row : table.rows()) {
            line(text, table.columns().stream().map(row::cell).toList());
        }
        return text.toString();
    }

    private static void line(StringBuilder text, List<String> cells) {
        text.append(cells.stream().map(ReadingsFile::quoted).collect(Collectors.joining(",")))
                .append('\n');
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == '"' || c == ',' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    private static void refuseSeparator(String text, String source) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        if (first.indexOf(',') < 0 && first.indexOf(';') >= 0) {
            throw new InvalidInput("the separator", ";", FORM, source + ", line 1");
        }
        if (first.indexOf(',') < 0 && first.indexOf('\t') >= 0) {
            throw new InvalidInput("the separator", "a tab", FORM, source + ", line 1");
        }
    }

    private static boolean isBlank(CSVRecord record) {
        return record.stream().allMatch(String::isBlank);
    }

    private static List<String> heads(CSVRecord record, String where) {
        List<String> columns = new ArrayList<>();
        for (String cell : record) {
            String head = cell.strip();
            if (head.isEmpty()) {
                throw new InvalidInput("a column head", "", "a head over every column", where);
            }
            if (columns.contains(head)) {
                throw new InvalidInput("a column given twice", head, "each column once", where);
            }
            columns.add(head);
        }
        if (columns.size() > MOST_COLUMNS) {
            throw new InvalidInput(
                    "count of columns", String.valueOf(columns.size()), "at most " + MOST_COLUMNS, where);
        }
        return columns;
    }

    private static ReadingsTable.Row row(CSVRecord record, List<String> columns, int line, String source) {
        if (record.size() != columns.size()) {
            throw wrongCount(record, columns.size(), source + ", line " + line);
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            if (!record.get(i).isBlank()) {
                cells.put(columns.get(i), record.get(i).strip());
            }
        }
        return new ReadingsTable.Row(line, cells);
    }

    private static InvalidInput wrongCount(CSVRecord record, int columns, String where) {
        String cells = record.size() + " cells";
        boolean semicolons = record.stream().anyMatch(cell -> cell.indexOf(';') >= 0);
        if (record.size() == 1 && semicolons) {
            return new InvalidInput("the separator", ";", FORM, where);
        }
        for (int i = 0; i + 1 < record.size() && record.size() > columns; i++) {
            boolean pair = DIGIT.matcher(record.get(i).strip()).matches()
                    && DIGIT.matcher(record.get(i + 1).strip()).matches();
            if (pair) {
                String allowed = columns + " cells, one under each head; write decimals with a point (72.5)"
                        + " and thousands without a comma (1500)";
                return new InvalidInput("a row", cells, allowed, where);
            }
        }
        return new InvalidInput("a row", cells, columns + " cells, one under each head, empty ones too", where);
    }

    private static void check(int rows, String source) {
        if (rows > MOST_ROWS) {
            throw new InvalidInput("count of rows", "more than " + MOST_ROWS, "the rows of one night", source);
        }
    }
}
