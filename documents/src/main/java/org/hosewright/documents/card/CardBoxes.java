package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.hosewright.documents.drawing.LineStrip;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.press.Html;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;

/** The boxes of one line, a column a length, standing on the drawn line that they are about. */
final class CardBoxes {
    /** More boxes than this do not stand side by side in figures of 18 points and more. */
    private static final int MOST_US = 13;

    private static final int MOST_SI = 11;
    private static final double WIDEST_MM = 26;
    private static final double LETTER_MM = 259;
    private static final double A4_MM = 277;

    /** From this many boxes in a row on, their figures are set smaller. */
    private static final int MANY = 11;

    /** Lengths of whole sections that differ by less are one length. */
    private static final double SAME_M = 0.01;

    private final CardLine line;
    private final Figures figures;
    private final int columns;
    private final double box_mm;

    CardBoxes(CardLine line, Figures figures) {
        this.line = line;
        this.figures = figures;
        boolean us = figures.units() == UnitSystem.US;
        int most = us ? MOST_US : MOST_SI;
        int rows = Math.max(1, (line.entries().size() + most - 1) / most);
        this.columns = Math.max(1, (line.entries().size() + rows - 1) / rows);
        this.box_mm = Math.min(WIDEST_MM, (us ? LETTER_MM : A4_MM) / columns);
    }

    /** As many rows as the paper's width asks for, of like length. */
    List<Html> rows() {
        List<Html> rows = new ArrayList<>();
        List<CardEntry> entries = line.entries();
        for (int from = 0; from < entries.size(); from += columns) {
            rows.add(row(entries.subList(from, Math.min(entries.size(), from + columns)), from));
        }
        return rows;
    }

    private Html row(List<CardEntry> entries, int from) {
        boolean last = from + entries.size() == line.entries().size();
        int between = line.entries().size() < 2
                ? 1
                : line.entries().get(1).sections() - line.entries().get(0).sections();
        Html strip = new LineStrip(entries.size(), between, from == 0, last && endsAtLongest())
                .picture(says(entries, last), box_mm * entries.size());
        List<Html> lengths = IntStream.range(0, entries.size())
                .mapToObj(i -> length(entries.get(i), from + i == 0))
                .toList();
        return Html.tag(
                        "table",
                        Html.tag("tr", Html.all(entries.stream().map(this::box).toList()))
                                .in("boxes"),
                        Html.tag("tr", Html.tag("td", strip).with("colspan", String.valueOf(entries.size())))
                                .in("strip"),
                        Html.tag("tr", Html.all(lengths)).in("lengths"))
                .in(columns > MANY ? "many" : "few")
                .with("style", String.format(Locale.ROOT, "width:%.2fmm", box_mm * entries.size()));
    }

    /** The hose ends at a wall only where the last box is the longest safe stretch itself. */
    private boolean endsAtLongest() {
        CardEntry last = line.entries().get(line.entries().size() - 1);
        return Math.abs(last.length().metres() - line.longestSafe().metres()) < SAME_M;
    }

    private Html length(CardEntry entry, boolean lies) {
        return Html.tag(
                        "th",
                        Html.text(figures.text(entry.length())),
                        lies ? Html.tag("div", "as it lies").in("lies") : Html.NOTHING)
                .with("scope", "col");
    }

    private Html box(CardEntry entry) {
        return entry.stands() ? number(entry) : refused(entry);
    }

    private Html number(CardEntry entry) {
        List<Html> gives = CardWords.gives(entry, figures).stream()
                .map(words -> Html.tag("div", words).in("gives"))
                .toList();
        return Html.tag(
                "td",
                entry.tested() ? Html.NOTHING : Html.tag("div", "untested").in("mark"),
                pressure(entry.gauge(), "pump"),
                Html.all(gives));
    }

    private Html refused(CardEntry entry) {
        Html nearest = entry.nearest()
                .map(p -> Html.all(
                        pressure(p, "nearest"), Html.tag("div", "would do").in("gives")))
                .orElse(Html.tag("div", "nothing would do").in("gives"));
        return Html.tag("td", Html.tag("div", "refused").in("no"), nearest).in("refused");
    }

    private Html pressure(Pressure pressure, String style) {
        return Html.tag(
                        "div",
                        Html.text(figures.number(pressure)),
                        Html.tag("span", "\u00A0" + figures.units().unitOf(pressure))
                                .in("unit"))
                .in(style);
    }

    private String says(List<CardEntry> entries, boolean last) {
        return "The line from the pump at the left, a mark at each coupling, from "
                + figures.text(entries.get(0).length()) + " to "
                + figures.text(entries.get(entries.size() - 1).length())
                + (last ? "." : ", going on below.");
    }
}
