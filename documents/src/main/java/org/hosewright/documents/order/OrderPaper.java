package org.hosewright.documents.order;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.history.Mark;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderStep;

/** The order: what changes, every number engine by engine, the table of revisions, and the list to sign on reading. */
public final class OrderPaper {
    /** Lines left for people to sign on [1]. */
    private static final int BLANK_LINES = 8;

    private final OrderInFull order;
    private final Stamp stamp;
    private final Figures figures;

    private OrderPaper(OrderInFull order, Stamp stamp) {
        this.order = order;
        this.stamp = stamp;
        this.figures = new Figures(order.set().units());
    }

    /** The order as a sheet. */
    public static Sheet sheet(OrderInFull order, Stamp stamp) {
        return new OrderPaper(order, stamp).sheet();
    }

    private Sheet sheet() {
        String title = "Ordered pump pressures, " + order.name();
        List<Html> body = new ArrayList<>();
        body.add(Parts.runningHead(stamp, order.kit().company(), order.name()));
        body.add(Parts.stamp(stamp));
        body.add(Html.tag("h1", "What is ordered?"));
        body.add(Html.tag("p", order.kit().company() + ", " + order.name() + ". " + signed())
                .in("subject"));
        body.add(Parts.list(order.whyStale()));
        body.addAll(new OrderTables(order, figures).html());
        body.add(section("Revisions", revisions()));
        body.add(section("Read and understood", readers()));
        body.add(Html.tag("p", Parts.OVERRULED));
        return Sheet.report(title + ", " + order.kit().company(), figures.paper(), stamp, body);
    }

    private String signed() {
        return order.revision()
                .signature()
                .map(step -> "Signed by " + step.mark().who() + " on "
                        + day(step.mark().at()) + ".")
                .orElse("Not signed.");
    }

    private Html revisions() {
        Table table = new Table()
                .figures("no.")
                .words("code")
                .words("standing")
                .words("proposed")
                .words("why")
                .words("signed");
        for (OrderRevision revision : order.book().revisions()) {
            table.row(
                    Long.toString(revision.number()),
                    revision.code(),
                    order.book().standing(revision).word(),
                    by(revision.mark()),
                    revision.mark().why(),
                    revision.signature().map(step -> by(step.mark())).orElse("no"));
        }
        return table.html();
    }

    /** Who has acknowledged it, then empty lines for those who sign on paper. */
    private Html readers() {
        Table table = new Table().words("name").words("engine").words("day").words("signature");
        for (OrderStep step : order.revision().steps()) {
            if (step.kind() == OrderStep.Kind.ACKNOWLEDGED) {
                table.row(
                        step.mark().who(),
                        Figures.name(step.engine()),
                        day(step.mark().at()),
                        "recorded");
            }
        }
        for (int i = 0; i < BLANK_LINES; i++) {
            table.row("\u00a0", "", "", "");
        }
        return table.html();
    }

    private String by(Mark mark) {
        return mark.who() + ", " + day(mark.at());
    }

    private String day(Instant at) {
        return Figures.day(LocalDate.ofInstant(at, ZoneId.of(order.kit().zone())));
    }

    static Html section(String head, Html inside) {
        return Html.tag("div", Html.tag("h2", head), inside).in("section whole");
    }
}
