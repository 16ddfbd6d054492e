package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;

/** The card of each engine's panel, discharge by length, and behind it what its numbers rest on. */
public final class PumpCard {
    private final CardSet set;
    private final Stamp stamp;
    private final Figures figures;

    private PumpCard(CardSet set, Stamp stamp) {
        this.set = set;
        this.stamp = stamp;
        this.figures = new Figures(set.kit().units());
    }

    /** The card as a sheet. */
    public static Sheet sheet(CardSet set, Stamp stamp) {
        return new PumpCard(set, stamp).sheet();
    }

    private Sheet sheet() {
        List<Html> body = new ArrayList<>();
        body.add(Parts.runningHead(stamp, set.kit().company(), CardWords.revision(set)));
        if (set.engines().isEmpty()) {
            body.add(Html.all(Html.tag("h1", "What do I pump?"), Parts.stamp(stamp), CardWords.none()));
        }
        for (EngineCard card : set.engines()) {
            body.add(panel(card));
            body.add(new CardGrounds(set, figures).of(card));
        }
        return new Sheet(
                "Pump card, " + set.kit().company(),
                "card",
                figures.paper() + " landscape",
                stamp,
                StampGrid.WHOLE_PAGE,
                Html.all(body));
    }

    private Html panel(EngineCard card) {
        String engine = Figures.sentence(Figures.name(card.engine().engine().id()));
        List<Html> lines = card.lines().stream().map(this::line).toList();
        return Html.tag(
                        "div",
                        Html.tag("div", Html.tag("h1", engine + ": what do I pump?"), Parts.stamp(stamp))
                                .in("head"),
                        Html.all(lines),
                        Html.tag("p", Parts.OVERRULED).in("overruled"))
                .in("panel");
    }

    private Html line(CardLine line) {
        List<String> refusals = CardWords.refusals(line, figures);
        return Html.tag(
                        "div",
                        head(line),
                        Html.all(new CardBoxes(line, figures).rows()),
                        refusals.isEmpty() ? Html.NOTHING : Parts.list(refusals).in("refusals"),
                        Html.tag("p", CardWords.stops(line, figures)).in("stops"),
                        Html.tag("p", String.join(" ", line.cautions()) + " " + CardWords.evidence(line))
                                .in("evidence"))
                .in("line");
    }

    private Html head(CardLine line) {
        return Html.tag(
                "h2",
                Html.tag("span", Figures.name(line.hosePackage().discharge())).in("name"),
                Html.tag("span", line.hose() + ", " + line.nozzle()).in("what"),
                Html.tag("span", "read on " + line.gauge()).in("gauge"));
    }
}
