package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;

/** Every package on a strip of three leaves, folded like a fan to fit a pocket. */
public final class PocketCard {
    private static final int LEAVES = 3;
    private static final int BOXES_IN_ROW = 5;

    /** Height of a leaf in rows of boxes; a package's head and foot take as much as two rows. */
    private static final int LEAF_ROWS = 10;

    private static final int HEAD_ROWS = 2;

    /** As the style sheet has it. */
    private static final StampGrid STRIP = new StampGrid(10, 34, 85, 140, LEAVES, 1, Integer.MAX_VALUE);

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
        leaves.add(lastLeaf());
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
                stamp.words(),
                STRIP,
                body);
    }

    private List<Html> leaves(EngineCard card) {
        List<Html> leaves = new ArrayList<>();
        List<Html> packages = new ArrayList<>();
        int rows = 0;
        for (CardLine line : card.lines()) {
            int takes = HEAD_ROWS + (line.entries().size() + BOXES_IN_ROW - 1) / BOXES_IN_ROW;
            if (rows + takes > LEAF_ROWS && !packages.isEmpty()) {
                leaves.add(leaf(card, packages));
                packages.clear();
                rows = 0;
            }
            packages.add(line(line));
            rows += takes;
        }
        leaves.add(leaf(card, packages));
        return leaves;
    }

    private Html leaf(EngineCard card, List<Html> packages) {
        return Html.tag(
                        "div",
                        Html.tag("div", stamp.words()).in("words"),
                        Html.tag(
                                "h2",
                                Figures.sentence(
                                        Figures.name(card.engine().engine().id()))),
                        Html.all(packages),
                        Html.tag("p", CardWords.revision(set)).in("fine"))
                .in("leaf");
    }

    private Html line(CardLine line) {
        List<Html> boxes = line.entries().stream().map(this::box).toList();
        return Html.tag(
                        "div",
                        Html.tag(
                                "h3",
                                Html.tag("span", Figures.name(line.hosePackage().discharge()))
                                        .in("name"),
                                Html.text(" " + line.hose() + ", " + line.nozzle())),
                        Html.tag("div", Html.all(boxes)).in("boxes"),
                        Html.tag(
                                        "p",
                                        "Read on " + line.gauge() + ". Each floor up add "
                                                + figures.text(line.floorAdder()) + ". Stops at "
                                                + figures.text(line.longestSafe()) + ": " + line.stoppedBy() + ".")
                                .in("fine"))
                .in("line");
    }

    private Html box(CardEntry entry) {
        Html length = Html.tag("div", figures.text(entry.length())).in("length");
        return Html.tag(
                        "div",
                        entry.stands()
                                ? number(entry)
                                : Html.tag("div", "refused").in("no"),
                        length)
                .in("box");
    }

    private Html number(CardEntry entry) {
        return Html.tag(
                        "div",
                        Html.text(figures.number(entry.gauge())),
                        Html.tag("span", "\u00A0" + figures.units().unitOf(entry.gauge()))
                                .in("unit"))
                .in(entry.tested() ? "pump" : "pump unflown");
    }

    private Html lastLeaf() {
        List<Html> evidence = new ArrayList<>();
        List<String> cautions = new ArrayList<>();
        for (EngineCard card : set.engines()) {
            for (CardLine line : card.lines()) {
                evidence.add(
                        Html.tag("li", Figures.name(line.hosePackage().discharge()) + ": " + line.evidence() + "."));
                line.cautions().stream().filter(c -> !cautions.contains(c)).forEach(cautions::add);
            }
        }
        return Html.tag(
                        "div",
                        Html.tag("div", stamp.words()).in("words"),
                        Html.tag("h2", "What do these numbers rest on?"),
                        Html.tag("ul", Html.all(evidence)),
                        Html.tag(
                                "p",
                                "A dotted number is untested: beyond what was flown. A refused one fails a check as rounded: see the pump"
                                        + " card."),
                        Html.tag("h3", "Keep in mind").in("mind"),
                        Parts.list(cautions),
                        Html.tag("p", Parts.OVERRULED),
                        Html.tag("p", set.kit().company() + ", " + CardWords.revision(set))
                                .in("fine"))
                .in("leaf");
    }
}
