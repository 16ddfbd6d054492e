package org.hosewright.documents.part;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.press.Html;

/** A ruled table under way: heads, then rows whose first cell names them. */
public final class Table {
    private final List<Html> heads = new ArrayList<>();
    private final List<Html> rows = new ArrayList<>();
    private final List<Boolean> words = new ArrayList<>();

    /** A column of figures. */
    public Table figures(String head) {
        return column(head, false);
    }

    /** A column of words. */
    public Table words(String head) {
        return column(head, true);
    }

    /** A row of plain cells, as many as there are columns. */
    public Table row(String... cells) {
        return row("", List.of(cells).stream().map(Html::text).toList());
    }

    /** A row.
     *
     * @param style class of the row; empty for none
     * @param cells as many as there are columns
     */
    public Table row(String style, List<Html> cells) {
        List<Html> made = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            Html cell = i == 0 ? Html.tag("th", cells.get(i)).with("scope", "row") : Html.tag("td", cells.get(i));
            made.add(words.get(i) ? cell.in("words") : cell);
        }
        Html row = Html.tag("tr", Html.all(made));
        rows.add(style.isEmpty() ? row : row.in(style));
        return this;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    public Html html() {
        return Html.tag("table", Html.tag("thead", Html.tag("tr", Html.all(heads))), Html.tag("tbody", Html.all(rows)));
    }

    private Table column(String head, boolean ofWords) {
        Html cell = Html.tag("th", head).with("scope", "col");
        heads.add(ofWords ? cell.in("words") : cell);
        words.add(ofWords);
        return this;
    }
}
