package org.hosewright.documents.night;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.evidence.plan.Means;
import org.hosewright.evidence.plan.TestPoint;
import org.hosewright.ledger.plan.PlanReport;

/** The table that the recorder fills in: what to lay and hold, what is expected, and a box for each needle. */
final class RecorderSheet {
    private static final Html BOX = Html.tag("span", "\u00a0");

    /** Lines left for readings that were not planned [1]. */
    private static final int SPARE_LINES = 3;

    private final PlanReport report;
    private final Means means;
    private final Figures figures;
    private final boolean sloped;

    RecorderSheet(PlanReport report, Figures figures) {
        this.report = report;
        this.means = report.plan().means();
        this.figures = figures;
        this.sloped = report.plan().points().stream()
                .anyMatch(point -> point.line().rise().metres() != 0);
    }

    Html readings() {
        Table table = heads();
        int before = -1;
        int number = 0;
        for (TestPoint point : report.plan().points()) {
            number++;
            table.row(point.lay() == before ? "fill" : "fill laid", cells(number, point, point.lay() != before));
            before = point.lay();
        }
        int columns = cells(0, report.plan().points().get(0), true).size();
        for (int i = 0; i < SPARE_LINES; i++) {
            table.row("fill", Collections.nCopies(columns, BOX));
        }
        return Html.all(
                table.html(),
                Html.tag(
                                "p",
                                "Pump pressures are as the gauge named shows them. Raise the pump slowly to the pressure at the"
                                        + " tip; go no further than \"never above\", whatever the tip gauge shows. Write what the"
                                        + " needle shows, not what is expected.")
                        .in("fine"));
    }

    private Table heads() {
        String pressure = " " + figures.units().pressure().symbol();
        Table table = new Table().words("reading").words("lay");
        if (sloped) {
            table.words("tip against pump");
        }
        table.figures("hold at the tip" + pressure)
                .figures("pump about" + pressure)
                .figures("never above" + pressure)
                .figures("flow about " + figures.units().flow().symbol())
                .figures("reaction " + figures.units().force().symbol())
                .words("pump read");
        means.tipGauge().ifPresent(gauge -> table.words("tip read"));
        means.meter().ifPresent(meter -> table.words("meter read"));
        return table.words("time").words("kinks, gates, doubts");
    }

    private List<Html> cells(int number, TestPoint point, boolean laid) {
        List<Html> cells = new ArrayList<>();
        cells.add(Html.tag("strong", String.valueOf(number)));
        cells.add(laid ? Html.tag("strong", "lay " + figures.text(point.line().length())) : Html.text("the same"));
        if (sloped) {
            cells.add(Html.text(figures.shown().rise(point.line().rise())));
        }
        if (point.shut()) {
            cells.add(Html.tag("strong", "nozzle shut"));
            cells.add(Html.text("idle"));
        } else {
            cells.add(Html.tag("strong", figures.number(point.state().tip())));
            cells.add(Html.text(figures.number(point.atPumpGauge(means))));
        }
        cells.add(Html.tag("strong", point.never().map(figures::number).orElse("not set")));
        cells.add(Html.text(point.shut() ? "none" : figures.number(point.state().flow())));
        cells.add(Html.text(point.shut() ? "none" : figures.number(point.state().reaction())));
        cells.add(Html.tag("span", point.pumpGauge()).in("whose"));
        means.tipGauge().ifPresent(gauge -> cells.add(Html.tag("span", gauge).in("whose")));
        means.meter()
                .ifPresent(meter ->
                        cells.add(Html.tag("span", point.shut() ? "" : meter).in("whose")));
        cells.add(Html.tag("span", "\u00a0").in("whose"));
        cells.add(BOX);
        return cells;
    }

    /** The gauges' own zeros, before and after: each offset that is written down is one unknown less. */
    static Html gauges(Means means) {
        Table table = new Table()
                .words("gauge")
                .words("shows open to air, before")
                .words("shows open to air, after")
                .words("read by");
        List<String> gauges = new ArrayList<>(means.pumpGauges());
        means.tipGauge().ifPresent(gauges::add);
        gauges.forEach(gauge -> table.row("fill", List.of(Html.text(gauge), BOX, BOX, BOX)));
        return table.html();
    }
}
