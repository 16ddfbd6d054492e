package org.hosewright.documents.ground;

import java.util.Optional;
import org.hosewright.documents.drawing.Stroking;
import org.hosewright.documents.matter.WalkMatter;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.ledger.walk.SectionThere;
import org.hosewright.ledger.walk.WalkReport;

/** What each length reaches along a way that was walked: one page with its profile and the company's photographs. */
public final class WalkPaper {
    private static final org.hosewright.hydraulics.profile.Sheet PAPER = org.hosewright.hydraulics.profile.Sheet.PAPER;

    private final WalkMatter matter;
    private final WalkReport report;
    private final Figures figures;

    private final RowsThatFit rows;
    private final OnePage page;

    private WalkPaper(WalkMatter matter) {
        this.matter = matter;
        this.report = matter.report();
        this.figures = new Figures(report.units());
        this.rows = RowsThatFit.of(report.sections());
        this.page = OnePage.of(rows.lines(), GroundParts.withOutdoors(report.cautions()), report.assumed());
    }

    public static Sheet sheet(WalkMatter matter, Stamp stamp) {
        return new WalkPaper(matter).sheet(stamp);
    }

    private Sheet sheet(Stamp stamp) {
        String title = "What each length reaches: " + matter.name();
        Html inside = Html.all(
                Parts.stamp(stamp),
                Html.tag("h1", matter.name()),
                Html.tag("p", subject()).in("subject"),
                matter.profile().map(this::drawing).orElse(Html.NOTHING),
                GroundParts.section("Each length", table()),
                GroundParts.section("The way", GroundParts.place(findMap(), matter.photographs())),
                GroundParts.section("Keep in mind", GroundParts.cautions(report.cautions())),
                GroundParts.section("Taken as given", Parts.list(report.assumed())),
                GroundParts.attribution(matter.attributions()));
        return new Sheet(
                title + ", " + matter.company(),
                "report ground",
                figures.paper(),
                stamp,
                StampGrid.WHOLE_PAGE,
                Html.all(Parts.runningHead(stamp, matter.company(), "revision " + inside.code()), inside));
    }

    private String subject() {
        var walk = report.walk();
        String way = matter.company() + ". " + figures.band(walk.distance()) + " walked; "
                + figures.shown().rise(walk.rise().up().value()) + ", from "
                + walk.rise().says()
                + ". Summed from position to position it would be " + figures.text(walk.raw()) + ".";
        return report.longestSafe()
                .map(safe -> way + " "
                        + report.named()
                                .map(named -> Figures.sentence(Figures.name(named.id())))
                                .orElse("")
                        + " is safe to " + figures.text(safe) + " along it"
                        + report.stoppedBy()
                                .map(limit -> "; stopped by " + limit.what())
                                .orElse("") + ".")
                .orElse(way);
    }

    private Optional<Html> findMap() {
        return page.map() > 0
                ? Optional.of(GroundParts.map(report.walk(), matter.shapes(), report.units(), page.map()))
                : Optional.empty();
    }

    private Html drawing(LineProfile profile) {
        String says = "The line along the walked way: " + profile.pump().number() + " "
                + profile.pump().unit()
                + " at the pump falls over the ground to the tip, which flows "
                + profile.tip().number() + " "
                + profile.tip().unit() + ".";
        return Html.tag("div", Stroking.of(profile.draw(room()), says)).in("profile");
    }

    /** The profile gives way to long tables and lists: what each length reaches is one page. */
    private org.hosewright.hydraulics.profile.Sheet room() {
        return new org.hosewright.hydraulics.profile.Sheet(PAPER.width(), page.profile(), PAPER.type());
    }

    private Html table() {
        boolean laid = report.sections().stream().anyMatch(there -> there.line().isPresent());
        Table table = new Table().figures("section").figures("hose").words("ground");
        if (laid) {
            table.figures("pump, reckoned").figures("ordered").figures("flow").words("first limit");
        }
        rows.rows().forEach(there -> row(table, there, laid));
        String says = rows.says();
        return says.isEmpty()
                ? table.html()
                : Html.all(table.html(), Html.tag("p", says).in("fine"));
    }

    private void row(Table table, SectionThere there, boolean laid) {
        String section = Integer.toString(there.mark().section());
        String hose = figures.text(there.mark().hose());
        String ground = figures.shown().rise(there.mark().place().height());
        if (!laid) {
            table.row(section, hose, ground);
        } else if (there.line().isEmpty()) {
            table.row(section, hose, ground, "", "", "", "within the package's other hose");
        } else {
            var line = there.line().get();
            table.row(
                    section,
                    hose,
                    ground,
                    figures.band(line.pump()),
                    line.ordered().map(figures::text).orElse("none"),
                    GroundParts.holds(line, figures.shown()),
                    GroundParts.limit(line));
        }
    }
}
