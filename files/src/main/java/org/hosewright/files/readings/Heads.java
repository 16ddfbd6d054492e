package org.hosewright.files.readings;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Unit;

/** The column heads of a table, understood: which column is which, and in what unit. */
final class Heads {
    private static final Pattern HEAD = Pattern.compile("([^\\[\\]]*?)\\s*(?:\\[\\s*([^\\[\\]]*?)\\s*\\])?");

    private final Map<Column, Head> heads = new EnumMap<>(Column.class);

    private Heads() {}

    /** One head.
     *
     * @param text as written, the key to a row's cells
     * @param unit of the numbers below it, for a column of quantities
     */
    record Head(String text, Optional<Unit> unit) {}

    /** The heads of a table.
     *
     * @param where the place, for errors
     */
    static Heads of(Collection<String> columns, String where) {
        Heads heads = new Heads();
        for (String text : columns) {
            heads.add(text, where);
        }
        return heads;
    }

    Optional<Head> find(Column column) {
        return Optional.ofNullable(heads.get(column));
    }

    /** How a column is headed here, or would be. */
    String name(Column column) {
        return find(column).map(Head::text).orElse(column.word());
    }

    /** Refuses a table that lacks a column which every reading needs. */
    void checkRequired(String where) {
        for (Column column : Column.required()) {
            if (!heads.containsKey(column)) {
                throw new InvalidInput(
                        "column '" + column.word() + "'", "", "a column headed " + example(column), where);
            }
        }
        if (!heads.containsKey(Column.TIP) && !heads.containsKey(Column.FLOW)) {
            String allowed = "a column headed " + example(Column.TIP) + ", or one headed " + example(Column.FLOW);
            throw new InvalidInput("column 'tip' or 'flow'", "", allowed, where);
        }
    }

    private void add(String text, String where) {
        Matcher head = HEAD.matcher(text);
        if (!head.matches()) {
            throw new InvalidInput(
                    "a column head", text, "a name with its unit in brackets, as in 'pump [psi]'", where);
        }
        String word = head.group(1);
        Optional<Column> column = Column.find(word);
        if (column.isEmpty()) {
            refuseOtherSpelling(text, word, where);
            return;
        }
        Optional<Unit> unit = unit(column.get(), text, Optional.ofNullable(head.group(2)), where);
        Head before = heads.put(column.get(), new Head(text, unit));
        if (before != null) {
            String allowed = "only one of '" + before.text() + "' and '" + text + "'";
            throw new InvalidInput("a second column for " + word, text, allowed, where);
        }
    }

    private static void refuseOtherSpelling(String text, String word, String where) {
        String usual = word.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ").strip();
        Column.find(usual).ifPresent(meant -> {
            throw new InvalidInput("a column head", text, "the exact spelling: " + example(meant), where);
        });
    }

    private static Optional<Unit> unit(Column column, String text, Optional<String> written, String where) {
        if (column.kind().isEmpty()) {
            written.ifPresent(unit -> {
                throw new InvalidInput("a column head", text, "'" + column.word() + "', without a unit", where);
            });
            return Optional.empty();
        }
        Kind kind = column.kind().get();
        Optional<Unit> unit = Unit.listOf(kind).stream()
                .filter(one -> one.symbol().equals(written.orElse("")))
                .findFirst();
        if (unit.isEmpty()) {
            String allowed = Unit.listOf(kind).stream()
                    .map(one -> column.word() + " [" + one.symbol() + "]")
                    .collect(Collectors.joining(", "));
            throw new InvalidInput("the unit in a column head", text, allowed, where);
        }
        return unit;
    }

    private static String example(Column column) {
        String unit = column.kind()
                .map(kind -> " [" + Unit.listOf(kind).get(0).symbol() + "]")
                .orElse("");
        return "'" + column.word() + unit + "'";
    }
}
