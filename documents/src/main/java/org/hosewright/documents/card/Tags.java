package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.drawing.LineStrip;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;

/** A tag for each package's discharge: what its gauge must show for the line as it lies, to cut out and hang there. */
public final class Tags {
    private static final int ACROSS = 2;
    private static final int DOWN = 3;
    private static final double STRIP_MM = 60;

    private final CardSet set;
    private final Stamp stamp;
    private final Figures figures;

    private Tags(CardSet set, Stamp stamp) {
        this.set = set;
        this.stamp = stamp;
        this.figures = new Figures(set.kit().units());
    }

    /** The tags as a sheet. */
    public static Sheet sheet(CardSet set, Stamp stamp) {
        return new Tags(set, stamp).sheet();
    }

    private Sheet sheet() {
        List<Html> tags = new ArrayList<>();
        for (EngineCard card : set.engines()) {
            card.lines().forEach(line -> tags.add(tag(card, line)));
        }
        List<Html> pages = new ArrayList<>();
        for (int from = 0; from < tags.size(); from += ACROSS * DOWN) {
            pages.add(page(tags.subList(from, Math.min(tags.size(), from + ACROSS * DOWN))));
        }
        Html body = Html.all(
                Parts.runningHead(stamp, "Discharge tags. Cut along the dashed lines.", CardWords.revision(set)),
                Html.all(pages));
        return new Sheet(
                "Discharge tags, " + set.kit().company(),
                "tags",
                figures.paper(),
                stamp.words(),
                grid(tags.size()),
                body);
    }

    /** As the style sheet has it. */
    private static StampGrid grid(int tags) {
        return new StampGrid(10, 32, 95, 79, ACROSS, DOWN, tags);
    }

    private Html page(List<Html> tags) {
        List<Html> rows = new ArrayList<>();
        for (int from = 0; from < tags.size(); from += ACROSS) {
            Html cells = Html.all(tags.subList(from, Math.min(tags.size(), from + ACROSS)));
            rows.add(Html.tag("div", cells).in("row"));
        }
        Html top = Html.tag("div", Parts.stamp(stamp), Html.tag("h1", "What do I pump on this discharge?"))
                .in("top");
        return Html.tag("div", top, Html.all(rows)).in("page");
    }

    private Html tag(EngineCard card, CardLine line) {
        CardEntry lies = line.entries().get(0);
        return Html.tag(
                        "div",
                        Html.tag("div", stamp.words()).in("words"),
                        Html.tag(
                                "h2",
                                Html.tag("span", Figures.name(line.hosePackage().discharge()))
                                        .in("name"),
                                Html.tag(
                                                "span",
                                                Figures.name(
                                                        card.engine().engine().id()))
                                        .in("engine")),
                        lies.stands() ? pressure(lies.gauge()) : refused(lies),
                        Html.tag("div", Html.all(gives(lies))).in("gives"),
                        foot(line, lies))
                .in("tag");
    }

    private Html foot(CardLine line, CardEntry lies) {
        return Html.tag(
                        "div",
                        new LineStrip(lies.sections(), 1, true, false)
                                .picture("The line as it lies, a mark at each coupling.", STRIP_MM),
                        Html.tag("p", "read on " + line.gauge()).in("gauge"),
                        Html.tag("p", figures.text(lies.length()) + " of " + line.hose() + ", " + line.nozzle()),
                        Html.tag("p", fine(line, lies)).in("fine"))
                .in("foot");
    }

    private String fine(CardLine line, CardEntry lies) {
        return (lies.tested() ? "" : "Untested length. ") + CardWords.evidence(line) + " "
                + String.join(" ", CardWords.cautions(line, lies))
                + " " + Figures.sentence(CardWords.revision(set)) + ", "
                + set.kit().company() + ".";
    }

    private List<Html> gives(CardEntry lies) {
        return lies.stands()
                ? CardWords.gives(lies, figures).stream()
                        .map(w -> Html.tag("div", w))
                        .toList()
                : List.of();
    }

    private Html pressure(Pressure pressure) {
        return Html.tag(
                        "div",
                        Html.text(figures.number(pressure)),
                        Html.tag("span", "\u00A0" + figures.units().unitOf(pressure))
                                .in("unit"))
                .in("pump");
    }

    private Html refused(CardEntry lies) {
        String nearest =
                lies.nearest().map(p -> figures.text(p) + " would do.").orElse("No rounded pressure would do.");
        return Html.tag(
                        "div",
                        Html.tag("span", "refused").in("no"),
                        Html.tag("p", String.join(" ", CardWords.why(lies)) + " " + nearest)
                                .in("nearest"))
                .in("refusal");
    }
}
