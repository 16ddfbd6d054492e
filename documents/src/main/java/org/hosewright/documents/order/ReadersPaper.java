package org.hosewright.documents.order;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderStep;

/** The list that drivers sign when they have read an order, engine by engine. */
public final class ReadersPaper {
    /** Lines left on each engine's list for people to sign on [1]. */
    private static final int BLANK_LINES = 12;

    private ReadersPaper() {}

    /** The acknowledgement list of an order. */
    public static Sheet sheet(OrderInFull order, Stamp stamp) {
        List<Html> sections = order.set().engines().stream()
                .map(engine -> OrderPaper.section(Figures.sentence(Figures.name(engine)), list(order, engine)))
                .toList();
        return SideSheet.of(order, stamp, "Who has read the order?", sections);
    }

    private static Html list(OrderInFull order, String engine) {
        Table table = new Table().words("name").words("day").words("signature");
        for (OrderStep step : order.revision().of(OrderStep.Kind.ACKNOWLEDGED, engine)) {
            LocalDate day =
                    LocalDate.ofInstant(step.mark().at(), ZoneId.of(order.kit().zone()));
            table.row(step.mark().who(), Figures.day(day), "recorded");
        }
        for (int i = 0; i < BLANK_LINES; i++) {
            table.row("\u00a0", "", "");
        }
        return Html.all(List.of(Html.tag("p", "I have read this order and will pump by it."), table.html()));
    }
}
