package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.documents.drawing.SquareCode;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;

/** Every package on a strip of three leaves, folded like a fan to fit a pocket. */
public final class PocketCard {
    private static final int LEAVES = 3;
    private static final String MARKS =
            "A dotted number is untested: beyond what was flown. A refused one fails a check as rounded: see the pump card.";

    private final CardSet set;
    private final Stamp stamp;
    private final Figures figures;

    private PocketCard(CardSet set, Stamp stamp) {
        this.set = set;
        this.stamp = stamp;
        this.figures = new Figures(set.kit().units());
    }

    /** The card as a sheet. */
    public static Sheet sheet(CardSet set, Stamp stamp) {
        return new PocketCard(set, stamp).sheet();
    }

    private Sheet sheet() {
        List<Html> leaves = new ArrayList<>();
        for (EngineCard card : set.engines()) {
            leaves.addAll(leaves(card));
        }
        leaves.addAll(leaves("What do these numbers rest on?", grounds(), stamp.findOrder()));
        List<Html> strips = new ArrayList<>();
        for (int from = 0; from < leaves.size(); from += LEAVES) {
            Html strip = Html.all(leaves.subList(from, Math.min(leaves.size(), from + LEAVES)));
            Html top = Html.tag("div", Parts.stamp(stamp), Html.tag("h1", "What do I pump?"))
                    .in("top");
            strips.add(Html.tag("div", top, Html.tag("div", strip).in("strip")).in("page"));
        }
        Html body = Html.all(
                Parts.runningHead(
                        stamp,
                        "Pocket card. Cut along the dashed lines, fold along the dotted ones.",
                        CardWords.revision(set)),
                Html.all(strips));
        return new Sheet(
                "Pocket card, " + set.kit().company(),
                "pocket",
                figures.paper() + " landscape",
                stamp,
                grid(leaves.size()),
                body);
    }

    /** As the style sheet has it. */
    private static StampGrid grid(int leaves) {
        return new StampGrid(10, 34, 85, 140, LEAVES, 1, leaves);
    }

    private List<Html> leaves(EngineCard card) {
        String engine = Figures.sentence(Figures.name(card.engine().engine().id()));
        return leaves(
                engine,
                card.lines().stream()
                        .map(line -> new PocketLine(line, figures).piece())
                        .toList(),
                stamp.findOrder()
                        .map(code -> code.ofEngine(card.engine().engine().id())));
    }

    private List<Html> leaves(String head, List<Leaf.Piece> pieces, Optional<SheetCode> code) {
        return Leaf.fill(pieces).stream()
                .map(inside -> Html.tag(
                                "div",
                                Html.tag("div", stamp.words()).in("words"),
                                Html.tag("h2", head),
                                Html.all(inside),
                                code.map(SquareCode::picture)
                                        .map(square -> Html.tag("div", square).in("code"))
                                        .orElse(Html.NOTHING),
                                Html.tag("p", set.kit().company() + ", " + CardWords.revision(set))
                                        .in("fine"))
                        .in("leaf"))
                .toList();
    }

    /** Evidence and cautions; a caution names its discharges where it is not for all of them. */
    private List<Leaf.Piece> grounds() {
        List<Leaf.Piece> pieces = new ArrayList<>();
        Map<String, List<String>> cautions = new LinkedHashMap<>();
        List<CardLine> lines =
                set.engines().stream().flatMap(e -> e.lines().stream()).toList();
        for (CardLine line : lines) {
            String name = Figures.name(line.hosePackage().discharge());
            pieces.add(Leaf.sentence(name + ": " + line.evidence() + "."));
            line.cautions()
                    .forEach(says -> cautions.computeIfAbsent(says, s -> new ArrayList<>())
                            .add(name));
        }
        pieces.add(Leaf.sentence(lines.isEmpty() ? "The kit has no package: there is nothing to pump by." : MARKS));
        cautions.forEach((says, names) -> pieces.add(
                Leaf.sentence(names.size() == lines.size() ? says : String.join(", ", names) + ": " + says)));
        pieces.add(Leaf.sentence(Parts.OVERRULED));
        return pieces;
    }
}
