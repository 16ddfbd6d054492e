package org.hosewright.cli.text;

import java.util.ArrayList;
import java.util.List;

/** A table in plain text: columns as wide as their widest cell, the last one free. */
final class Columns {
    private static final String INDENT = "  ";
    private static final String GAP = "   ";

    private final List<List<String>> rows = new ArrayList<>();

    Columns(String... heads) {
        add(heads);
    }

    void add(String... cells) {
        rows.add(List.of(cells));
    }

    boolean isEmpty() {
        return rows.size() == 1;
    }

    List<String> lines() {
        return rows.stream().map(this::line).filter(line -> !line.isEmpty()).toList();
    }

    private String line(List<String> row) {
        var line = new StringBuilder(INDENT);
        for (int column = 0; column < row.size(); column++) {
            String cell = row.get(column);
            line.append(cell);
            if (column < row.size() - 1) {
                line.append(" ".repeat(width(column) - cell.length())).append(GAP);
            }
        }
        return line.toString().stripTrailing();
    }

    private int width(int column) {
        return rows.stream()
                .filter(row -> row.size() > column)
                .mapToInt(row -> row.get(column).length())
                .max()
                .orElse(0);
    }
}
