package org.hosewright.documents.night;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.evidence.plan.Plan;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.plan.PlanReport;

/** The sheets of a planned night: the recorder's with its blank boxes first, then what everybody is told beforehand. */
public final class NightPaper {
    private static final String QUESTION = "What should we flow next?";

    private final PlanReport report;
    private final Plan plan;
    private final Figures figures;

    private NightPaper(PlanReport report) {
        this.report = report;
        this.plan = report.plan();
        this.figures = new Figures(report.kit().units());
    }

    /** The sheets of a plan. */
    public static Sheet sheet(PlanReport report, Stamp stamp) {
        return new NightPaper(report).sheet(stamp);
    }

    private Sheet sheet(Stamp stamp) {
        String night = Figures.sentence(Figures.name(report.hosePackage().id()));
        Html inside = Html.all(
                Parts.stamp(stamp),
                Html.tag("h1", QUESTION),
                Html.tag("p", subject()).in("subject"),
                Html.all(sections()));
        return new Sheet(
                QUESTION + " " + night + ", " + report.kit().company(),
                "night",
                figures.paper() + " landscape",
                stamp,
                StampGrid.WHOLE_PAGE,
                Html.all(
                        Parts.runningHead(stamp, report.kit().company(), night + ", revision " + inside.code()),
                        inside));
    }

    private String subject() {
        return Figures.day(report.asked().date()) + ". " + report.kit().company() + ", "
                + Figures.name(report.hosePackage().id()) + ": "
                + InWords.readings(plan.points().size()) + " on " + plan.layings()
                + (plan.layings() == 1 ? " lay" : " lays") + ", "
                + figures.text(plan.time()) + " from the briefing on, " + figures.text(plan.water()) + " of water.";
    }

    private List<Html> sections() {
        Briefing briefing = new Briefing(report, figures);
        List<Html> sections = new ArrayList<>();
        add(sections, "The readings, in this order", new RecorderSheet(report, figures).readings(), "section");
        whole(sections, "Gauges open to air", RecorderSheet.gauges(plan.means()));
        whole(sections, "Keep in mind", Parts.list(report.cautions()));
        whole(sections, "Go or no go", Briefing.ticked(report.goNoGo()));
        whole(sections, "Who does what", Briefing.named(report.roles()));
        whole(sections, "Know before flying it", Parts.list(plan.warnings()));
        whole(sections, "What it should tell", briefing.foreseen());
        whole(sections, "What it cannot tell", briefing.untold());
        add(sections, "Checked beforehand", briefing.checks(), "section");
        whole(sections, "Out of reach", Parts.list(plan.stopped()));
        whole(sections, "Taken as given", Parts.list(report.assumed()));
        return sections;
    }

    /** A section that stays on one page. */
    private static void whole(List<Html> sections, String head, Html inside) {
        add(sections, head, inside, "section whole");
    }

    private static void add(List<Html> sections, String head, Html inside, String style) {
        if (!inside.isEmpty()) {
            sections.add(Html.tag("div", Html.tag("h2", head), inside).in(style));
        }
    }
}
