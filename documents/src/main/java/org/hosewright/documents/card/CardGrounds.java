package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.hydraulics.order.Check;
import org.hosewright.hydraulics.order.OrderedCheck;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;

/** The page behind a panel's card: each number recomputed as it is rounded, from both ends of what the losses may be. */
final class CardGrounds {
    private static final List<String> COLUMNS = List.of(
            "length", "on the gauge", "flow", "least flow", "tip", "most at the tip", "reaction", "most reaction");

    private final CardSet set;
    private final Figures figures;

    CardGrounds(CardSet set, Figures figures) {
        this.set = set;
        this.figures = figures;
    }

    Html of(EngineCard card) {
        String engine = Figures.sentence(Figures.name(card.engine().engine().id()));
        return Html.tag(
                        "div",
                        Html.tag("h1", engine + ": what do these numbers rest on?"),
                        Html.tag("p", both()),
                        Html.all(card.lines().stream().map(this::line).toList()),
                        set.assumed().isEmpty() ? Html.NOTHING : Html.tag("h3", "Taken as given"),
                        Parts.list(set.assumed()),
                        Html.tag("p", Parts.OVERRULED).in("overruled"))
                .in("grounds");
    }

    private String both() {
        return "Each pressure is rounded to " + figures.text(set.step())
                + ". Least flow is taken where the losses are at the upper end of their 95 % band; tip pressure, reaction"
                + " and the pressure with all shut where they are at the lower end. One that fails is not printed.";
    }

    private Html line(CardLine line) {
        return Html.tag(
                        "div",
                        Html.tag(
                                "h2",
                                Html.tag("span", Figures.name(line.hosePackage().discharge()))
                                        .in("name"),
                                Html.tag("span", line.evidence() + ", read on " + line.gauge())
                                        .in("what")),
                        table(line),
                        Parts.list(checks(line)))
                .in("line");
    }

    private Html table(CardLine line) {
        List<Html> heads = new ArrayList<>();
        COLUMNS.forEach(c -> heads.add(Html.tag("th", c).with("scope", "col")));
        heads.add(Html.tag("th", "verdict").with("scope", "col").in("says"));
        return Html.tag(
                "table",
                Html.tag("thead", Html.tag("tr", Html.all(heads))),
                Html.tag(
                        "tbody", Html.all(line.entries().stream().map(this::row).toList())));
    }

    private Html row(CardEntry entry) {
        OrderedCheck check = entry.check();
        List<Html> cells = new ArrayList<>();
        cells.add(Html.tag("th", figures.text(entry.length())).with("scope", "row"));
        if (!entry.stands()) {
            cells.add(Html.tag("td", "refused")
                    .with("colspan", String.valueOf(COLUMNS.size() - 1))
                    .in("no"));
        } else {
            cells.add(Html.tag("td", Html.tag("strong", figures.text(entry.gauge()))));
            cells.add(Html.tag("td", figures.text(check.state().flow())));
            cells.add(Html.tag("td", figures.text(check.least().flow())));
            cells.add(Html.tag("td", figures.text(check.state().tip())));
            cells.add(Html.tag("td", figures.text(check.most().tip())));
            cells.add(Html.tag("td", figures.text(check.state().reaction())));
            cells.add(Html.tag("td", figures.text(check.most().reaction())));
        }
        cells.add(Html.tag("td", verdict(entry)).in("says"));
        return Html.tag("tr", Html.all(cells));
    }

    private String verdict(CardEntry entry) {
        String flown = entry.tested() ? "" : "Untested: beyond what was flown. ";
        long passed = entry.check().checks().stream().filter(Check::passed).count();
        return entry.stands() ? flown + "Passes all " + passed + " checks." : flown + String.join(" ", entry.refusal());
    }

    /** What was checked at the package's own length, and what was not. */
    private List<String> checks(CardLine line) {
        Set<String> says = new LinkedHashSet<>();
        line.entries().stream()
                .filter(e -> e.stands())
                .limit(1)
                .forEach(e ->
                        e.check().checks().forEach(c -> says.add("At " + figures.text(e.length()) + ": " + c.says())));
        line.entries().forEach(e -> says.addAll(e.check().notChecked()));
        return List.copyOf(says);
    }
}
