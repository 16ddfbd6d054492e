package org.hosewright.documents.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.order.OrderChange;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderedPressure;

/** What an order changes: old and new side by side, as gauge figures and as water; what stays is counted. */
public final class ChangePaper {
    private final OrderInFull order;
    private final Figures figures;
    private final List<OrderChange> changes;

    private ChangePaper(OrderInFull order) {
        this.order = order;
        figures = new Figures(order.set().units());
        changes = OrderChange.of(order.before(), order.set());
    }

    /** The change sheet of an order. */
    public static Sheet sheet(OrderInFull order, Stamp stamp) {
        var paper = new ChangePaper(order);
        List<Html> sections = new ArrayList<>();
        paper.changes.stream()
                .map(change -> change.line().engine())
                .distinct()
                .forEach(engine -> sections.add(paper.engine(engine)));
        return SideSheet.of(order, stamp, "What changes on the rig?", sections);
    }

    private Html engine(String engine) {
        List<OrderChange> mine = changes.stream()
                .filter(change -> change.line().engine().equals(engine))
                .toList();
        List<OrderChange> changed = mine.stream().filter(OrderChange::changed).toList();
        String says = changed.isEmpty()
                ? "No number changes."
                : changed.size() + " of " + mine.size()
                        + (order.before().isEmpty() ? " numbers are new." : " numbers change.");
        Html inside = changed.isEmpty() ? Html.tag("p", says) : Html.all(List.of(Html.tag("p", says), table(changed)));
        return OrderPaper.section(Figures.sentence(Figures.name(engine)), inside);
    }

    private Html table(List<OrderChange> changed) {
        Table table = new Table()
                .words("package")
                .figures("length")
                .figures("was")
                .figures("it delivered")
                .figures("ordered")
                .figures("it delivers");
        for (OrderChange change : changed) {
            table.row(
                    Figures.name(change.line().hosePackage()),
                    figures.text(change.length()),
                    figure(change.was(), "none"),
                    flow(change.was()),
                    figure(change.is(), "taken out"),
                    flow(change.is()));
        }
        return table.html();
    }

    private String figure(Optional<OrderedPressure> pressure, String none) {
        return pressure.map(there -> there.stands() ? figures.text(there.figure()) : "refused")
                .orElse(none);
    }

    private String flow(Optional<OrderedPressure> pressure) {
        return pressure.filter(OrderedPressure::stands)
                .map(there -> figures.text(there.flow()))
                .orElse("");
    }
}
