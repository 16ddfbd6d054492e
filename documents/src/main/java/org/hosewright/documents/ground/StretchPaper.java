package org.hosewright.documents.ground;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.matter.StretchMatter;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.stretch.SecondLine;
import org.hosewright.ledger.stretch.StretchReport;

/** The sheet of a stretch to an address: what to take, what the pump must do, what stops it, how the place looks. */
public final class StretchPaper {
    private static final double MAP_mm = 44;

    private final StretchMatter matter;
    private final StretchReport report;
    private final Figures figures;

    private StretchPaper(StretchMatter matter) {
        this.matter = matter;
        this.report = matter.report();
        this.figures = new Figures(matter.kit().units());
    }

    public static Sheet sheet(StretchMatter matter, Stamp stamp) {
        return new StretchPaper(matter).sheet(stamp);
    }

    private Sheet sheet(Stamp stamp) {
        String title = "Stretch to " + matter.stretch().address();
        Html inside = Html.all(
                Parts.stamp(stamp),
                Html.tag("h1", matter.stretch().address()),
                Html.tag("p", subject()).in("subject"),
                Html.all(sections()),
                GroundParts.attribution(matter.attributions()),
                Html.tag("p", Parts.OVERRULED).in("fine"));
        String company = matter.kit().company();
        return new Sheet(
                title + ", " + company,
                "report ground",
                figures.paper(),
                stamp,
                StampGrid.WHOLE_PAGE,
                Html.all(Parts.runningHead(stamp, company, "revision " + inside.code()), inside));
    }

    private String subject() {
        String stands = matter.stretch().site().stands();
        return matter.kit().company() + ". "
                + Figures.sentence(Figures.name(report.named().engine())) + " stands: "
                + (stands.isEmpty() ? "not said." : stands + (stands.endsWith(".") ? "" : "."));
    }

    private List<Html> sections() {
        List<Html> sections = new ArrayList<>();
        sections.add(GroundParts.section("Take", take()));
        sections.add(GroundParts.section("Pump", pump()));
        sections.add(GroundParts.section("Counted from", parts()));
        sections.add(GroundParts.section(
                "The place",
                GroundParts.place(
                        matter.way()
                                .map(way -> GroundParts.map(
                                        way, matter.shapes(), matter.kit().units(), MAP_mm)),
                        matter.photographs())));
        sections.add(GroundParts.section("Keep in mind", GroundParts.cautions(report.cautions())));
        String notes = matter.stretch().site().privateNotes();
        if (matter.withPrivate() && !notes.isEmpty()) {
            sections.add(GroundParts.section("Private", Html.tag("p", Html.tag("strong", notes))));
        }
        sections.add(GroundParts.section("Taken as given", Parts.list(report.assumed())));
        return sections;
    }

    private Html take() {
        var estimate = report.estimate();
        String range = estimate.fewest() == estimate.most()
                ? ""
                : " It may come to " + estimate.fewest() + " or to " + estimate.most() + ".";
        String line = InWords.hose(matter.kit(), report.named().hose()) + "; "
                + InWords.nozzle(
                        matter.kit(), report.named().nozzle(), report.named().setting());
        return Html.all(
                Html.tag(
                                "p",
                                Html.tag("strong", estimate.sections() + " sections, " + figures.text(estimate.hose())),
                                Html.text(" of " + chain() + "." + range))
                        .in("answer"),
                Html.tag("p", line + "."),
                Html.tag("p", stops()));
    }

    private String chain() {
        return String.join(
                ", lengthened by ",
                matter.stretch().packages().stream().map(Figures::name).toList());
    }

    private String stops() {
        String safe = "Safe to " + figures.text(report.longestSafe()) + " on this rise, less the reserve; stopped by "
                + report.stoppedBy() + ".";
        return report.isWithinReach() ? safe : "NOT WITHIN REACH. " + safe;
    }

    private Html pump() {
        List<Html> pieces = new ArrayList<>();
        matter.ordered()
                .ifPresent(ordered ->
                        pieces.add(Html.tag("p", Html.tag("strong", ordered)).in("answer")));
        pieces.add(table());
        pieces.add(Html.tag(
                "p",
                Figures.sentence(figures.shown().rise(report.rise())) + ". Each floor more, "
                        + figures.text(CardAnalysis.floor(matter.kit().units())) + ": add "
                        + figures.text(CardAnalysis.floorAdder(matter.kit().units())) + "."));
        report.second().ifPresent(second -> pieces.add(Html.tag("p", second(second))));
        return Html.all(pieces);
    }

    private Html table() {
        Table table = new Table()
                .figures("sections")
                .figures("hose")
                .figures("pump, reckoned")
                .figures("flow")
                .words("first limit");
        for (StretchReport.Laid laid : report.lines()) {
            double hose_m = laid.sections() * report.estimate().plan().section().metres();
            table.row(
                    Integer.toString(laid.sections()),
                    figures.text(new Length(hose_m)),
                    figures.band(laid.line().pump()),
                    GroundParts.holds(laid.line(), figures.shown()),
                    GroundParts.limit(laid.line()));
        }
        return table.html();
    }

    private String second(SecondLine second) {
        String both = "With " + Figures.name(second.named().id()) + " as a second line: pump "
                + figures.text(second.pump()) + ", gate " + Figures.name(second.gate()) + " down by "
                + figures.text(second.gated()) + ", " + figures.text(second.flow()) + " in all.";
        String held = second.first()
                .map(limit -> (second.isSafe() ? " First limit: " : " NOT SAFE: ") + GroundParts.limit(limit) + ".")
                .orElse(" No limit is known.");
        return second.enough() ? both + held : both + held + " MORE THAN THE PUMP IS RATED FOR AT THAT PRESSURE.";
    }

    private Html parts() {
        Table table = new Table().words("part").figures("hose").words("");
        report.estimate()
                .parts()
                .forEach(part -> table.row(part.kind().says(), figures.band(part.length()), part.says()));
        return table.html();
    }
}
