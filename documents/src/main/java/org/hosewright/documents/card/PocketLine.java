package org.hosewright.documents.card;

import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Lines;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;

/** One package on the pocket card: its name, a box a length, what adds to it and what stops it. */
final class PocketLine {
    private static final int BOXES_IN_ROW = 5;

    /** As the style sheet has it. */
    private static final double BOX_MM = 11.5;

    private static final double NAME_MM = 10.5;
    private static final double FINE_PT = 7.5;
    private static final double LEADING = 1.25;

    private final CardLine line;
    private final Figures figures;

    PocketLine(CardLine line, Figures figures) {
        this.line = line;
        this.figures = figures;
    }

    Leaf.Piece piece() {
        int rows = (line.entries().size() + BOXES_IN_ROW - 1) / BOXES_IN_ROW;
        String foot = foot();
        List<Html> boxes = line.entries().stream().map(this::box).toList();
        Html html = Html.tag(
                        "div",
                        Html.tag(
                                "h3",
                                Html.tag("span", Figures.name(line.hosePackage().discharge()))
                                        .in("name"),
                                Html.text(" " + line.hose() + ", " + line.nozzle())),
                        Html.tag("div", Html.all(boxes)).in("boxes"),
                        Html.tag("p", foot).in("fine"))
                .in("line");
        double foot_mm = Lines.height_mm(foot, FINE_PT, Leaf.WIDTH_MM, LEADING);
        return new Leaf.Piece(html, NAME_MM + rows * BOX_MM + foot_mm);
    }

    private String foot() {
        String stops = line.longestSafe().metres() > 0
                ? "Stops at " + figures.text(line.longestSafe()) + ": "
                : "No length is safe: ";
        return "Read on " + line.gauge() + ". Each floor up add " + figures.text(line.floorAdder())
                + CardWords.never(line, figures) + ". " + stops
                + line.stoppedBy() + ".";
    }

    private Html box(CardEntry entry) {
        Html length = Html.tag("div", figures.text(entry.length())).in("length");
        Html top = entry.stands() ? number(entry) : Html.tag("div", "refused").in("no");
        return Html.tag("div", top, length).in("box");
    }

    private Html number(CardEntry entry) {
        return Html.tag(
                        "div",
                        Html.text(figures.number(entry.gauge())),
                        Html.tag("span", "\u00A0" + figures.units().unitOf(entry.gauge()))
                                .in("unit"))
                .in(entry.tested() ? "pump" : "pump unflown");
    }
}
