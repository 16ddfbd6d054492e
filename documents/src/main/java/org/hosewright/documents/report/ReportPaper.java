package org.hosewright.documents.report;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.Swing;
import org.hosewright.ledger.line.InWords;

/** The report of a test night: the answer, then what it rests on. */
public final class ReportPaper {
    private static final String QUESTION = "What did the night show?";

    private final DrillReport report;
    private final Figures figures;

    private ReportPaper(DrillReport report) {
        this.report = report;
        this.figures = new Figures(report.kit().units());
    }

    /** The report as a sheet. */
    public static Sheet sheet(DrillReport report, Stamp stamp) {
        return new ReportPaper(report).sheet(stamp);
    }

    private Sheet sheet(Stamp stamp) {
        String night = Figures.sentence(Figures.name(report.name()));
        Html inside = Html.all(
                Parts.stamp(stamp),
                Html.tag("h1", QUESTION),
                Html.tag("p", subject()).in("subject"),
                Html.all(sections()));
        return new Sheet(
                QUESTION + " " + night + ", " + report.kit().company(),
                "report",
                figures.paper(),
                stamp,
                StampGrid.WHOLE_PAGE,
                Html.all(
                        Parts.runningHead(stamp, report.kit().company(), night + ", revision " + inside.code()),
                        inside));
    }

    private String subject() {
        long used =
                report.calibration().readings().stream().filter(r -> r.used()).count();
        String date = report.date().map(d -> Figures.day(d) + ". ").orElse("");
        return date + report.kit().company() + ", " + Figures.name(report.name()) + ". "
                + InWords.readings(report.night().readings().size()) + ", " + used + " used.";
    }

    private List<Html> sections() {
        List<Html> sections = new ArrayList<>();
        sections.addAll(new Profiles(report, figures).html());
        whole(sections, "The answer", Verdicts.html(report, figures));
        section(sections, "Pump pressure needed", Needed.html(report, figures));
        whole(sections, "What was measured", Measured.html(report, figures));
        section(sections, "The readings", Readings.html(report, figures));
        whole(sections, "Read with", Instruments.html(report, figures));
        whole(
                sections,
                "Without single readings",
                Parts.list(
                        report.steadiness().swings().stream().map(Swing::says).toList()));
        whole(sections, "What cannot be told", Untold.html(report));
        whole(sections, "Keep in mind", Parts.list(report.cautions()));
        section(sections, "Taken as given", Parts.list(report.assumed()));
        section(sections, "The working", Workings.html(report));
        return sections;
    }

    /** A section that may run on over a page's end. */
    private static void section(List<Html> sections, String head, Html inside) {
        add(sections, head, inside, "section");
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
