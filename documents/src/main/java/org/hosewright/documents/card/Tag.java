package org.hosewright.documents.card;

import java.util.List;
import java.util.Locale;
import org.hosewright.documents.drawing.LineStrip;
import org.hosewright.documents.drawing.SquareCode;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Lines;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;

/** One discharge's tag: the line as it lies on the rig, and what its gauge must show. */
final class Tag {
    private static final double LONGEST_STRIP_MM = 60;
    private static final double SECTION_MM = 15;

    /** Room from the drawn line down, and across, as the style sheet has it. */
    private static final double FOOT_MM = 35;

    private static final double WIDTH_MM = 88;
    private static final double LEADING = 1.2;
    private static final double GAUGE_PT = 10;
    private static final double HOSE_PT = 9.5;

    /** Type of the small print: the first that fits. */
    private static final List<Double> FINE_PT = List.of(7.5, 7.0, 6.5, 6.0, 5.5, 5.0);

    private final CardSet set;
    private final EngineCard card;
    private final CardLine line;
    private final CardEntry lies;
    private final Figures figures;

    Tag(CardSet set, EngineCard card, CardLine line) {
        this.set = set;
        this.card = card;
        this.line = line;
        this.lies = line.entries().get(0);
        this.figures = new Figures(set.kit().units());
    }

    Html html(Stamp stamp) {
        return Html.tag(
                        "div",
                        Html.tag("div", stamp.words()).in("words"),
                        head(),
                        code(stamp),
                        lies.stands() ? stands() : refused(),
                        foot())
                .in("tag");
    }

    private Html code(Stamp stamp) {
        String engine = card.engine().engine().id();
        return stamp.findOrder()
                .map(code -> Html.tag("div", SquareCode.picture(code.ofEngine(engine)))
                        .in("code"))
                .orElse(Html.NOTHING);
    }

    private Html head() {
        return Html.tag(
                "h2",
                Html.tag("span", Figures.name(line.hosePackage().discharge())).in("name"),
                Html.tag("span", Figures.name(card.engine().engine().id())).in("engine"));
    }

    private Html stands() {
        List<Html> gives = CardWords.gives(lies, figures).stream()
                .map(words -> Html.tag("div", words))
                .toList();
        return Html.all(
                lies.tested() ? Html.NOTHING : Html.tag("div", "untested").in("mark"),
                pressure(lies.gauge()),
                Html.tag("div", Html.all(gives)).in("gives"));
    }

    private Html pressure(Pressure pressure) {
        return Html.tag(
                        "div",
                        Html.text(figures.number(pressure)),
                        Html.tag("span", "\u00A0" + figures.units().unitOf(pressure))
                                .in("unit"))
                .in("pump");
    }

    private Html refused() {
        String nearest =
                lies.nearest().map(p -> figures.text(p) + " would do.").orElse("No rounded pressure would do.");
        return Html.tag(
                        "div",
                        Html.tag("span", "refused").in("no"),
                        Html.tag("p", String.join(" ", CardWords.why(lies)) + " " + nearest)
                                .in("nearest"))
                .in("refusal");
    }

    private Html foot() {
        String gauge = "read on " + line.gauge();
        String hose = figures.text(lies.length()) + " of " + line.hose() + ", " + line.nozzle();
        double strip_mm = Math.min(LONGEST_STRIP_MM, SECTION_MM * lies.sections());
        double left_mm = FOOT_MM
                - SECTION_MM / 4
                - Lines.height_mm(gauge, GAUGE_PT, WIDTH_MM, LEADING)
                - Lines.height_mm(hose, HOSE_PT, WIDTH_MM, LEADING);
        return Html.tag(
                        "div",
                        new LineStrip(lies.sections(), 1, true, false)
                                .picture("The line as it lies, a mark at each coupling.", strip_mm),
                        Html.tag("p", gauge).in("gauge"),
                        Html.tag("p", hose),
                        fine(left_mm))
                .in("foot");
    }

    private Html fine(double room_mm) {
        String words = CardWords.evidence(line) + " " + String.join(" ", CardWords.cautions(line, lies)) + " "
                + Figures.sentence(CardWords.revision(set)) + ", " + set.kit().company() + ".";
        double size = FINE_PT.stream()
                .filter(pt -> Lines.height_mm(words, pt, WIDTH_MM, LEADING) <= room_mm)
                .findFirst()
                .orElse(FINE_PT.get(FINE_PT.size() - 1));
        return Html.tag("p", words).in("fine").with("style", String.format(Locale.ROOT, "font-size:%.1fpt", size));
    }
}
