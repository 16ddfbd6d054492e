package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;

/** A tag for each package's discharge: what its gauge must show for the line as it lies, to cut out and hang there. */
public final class Tags {
    private static final int ACROSS = 2;
    private static final int DOWN = 3;

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
            card.lines().forEach(line -> tags.add(new Tag(set, card, line).html(stamp)));
        }
        List<Html> pages = new ArrayList<>();
        for (int from = 0; from < tags.size(); from += ACROSS * DOWN) {
            pages.add(page(tags.subList(from, Math.min(tags.size(), from + ACROSS * DOWN))));
        }
        if (pages.isEmpty()) {
            pages.add(page(List.of(CardWords.none())));
        }
        Html body = Html.all(
                Parts.runningHead(stamp, "Discharge tags. Cut along the dashed lines.", CardWords.revision(set)),
                Html.all(pages));
        return new Sheet(
                "Discharge tags, " + set.kit().company(), "tags", figures.paper(), stamp, grid(tags.size()), body);
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
}
