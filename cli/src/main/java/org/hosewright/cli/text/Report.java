package org.hosewright.cli.text;

import java.util.ArrayList;
import java.util.List;

/** Paragraphs of a report, an empty line between them. */
final class Report {
    private final List<String> lines = new ArrayList<>();

    void title(String text) {
        if (!lines.isEmpty()) {
            lines.add("");
        }
        lines.add(text);
    }

    void say(String text) {
        lines.add("  " + text);
    }

    void table(String title, Columns table) {
        if (!table.isEmpty()) {
            title(title);
            lines.addAll(table.lines());
        }
    }

    void list(String title, List<String> sentences) {
        if (!sentences.isEmpty()) {
            title(title);
            sentences.forEach(sentence -> lines.add("  - " + sentence));
        }
    }

    List<String> lines() {
        return List.copyOf(lines);
    }
}
