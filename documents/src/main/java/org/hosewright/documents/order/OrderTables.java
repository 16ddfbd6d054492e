package org.hosewright.documents.order;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.ledger.order.OrderChange;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** Every number of an order, engine by engine, beside what it replaces. */
final class OrderTables {
    private final OrderInFull order;
    private final Figures figures;
    private final List<OrderChange> changes;

    OrderTables(OrderInFull order, Figures figures) {
        this.order = order;
        this.figures = figures;
        this.changes = OrderChange.of(order.before(), order.set());
    }

    List<Html> html() {
        List<Html> sections = new ArrayList<>();
        for (String engine : order.set().engines()) {
            List<Html> tables = new ArrayList<>();
            tables.add(Html.tag("p", summary(engine)));
            order.set().linesOf(engine).forEach(line -> tables.add(block(line)));
            sections.add(Html.tag("div", Html.tag("h2", Figures.sentence(Figures.name(engine))), Html.all(tables))
                    .in("section"));
        }
        return sections;
    }

    private String summary(String engine) {
        List<OrderChange> mine = changes.stream()
                .filter(change -> change.line().engine().equals(engine))
                .toList();
        if (order.before().isEmpty()) {
            return "The first order: every number is new.";
        }
        long changed = mine.stream().filter(OrderChange::changed).count();
        return changed == 0
                ? "No number changes."
                : changed + " of " + mine.size() + " numbers change against the order signed before.";
    }

    private Html block(OrderedLine line) {
        Table table = new Table()
                .figures("length")
                .figures("was")
                .figures("ordered")
                .figures("delivers")
                .figures("at the tip")
                .figures("reaction")
                .words("");
        changes.stream()
                .filter(change -> change.line().hosePackage().equals(line.hosePackage()))
                .forEach(change -> row(table, change));
        String says = Figures.sentence(Figures.name(line.hosePackage())) + " from "
                + Figures.name(line.discharge()) + ", read on " + line.gauge() + ". Each floor up: add "
                + figures.text(line.floorAdder())
                + line.mostGauge()
                        .map(most -> ", never above " + figures.text(most))
                        .orElse("") + ".";
        return Html.tag("div", Html.tag("p", says).in("caption"), table.html()).in("block");
    }

    private void row(Table table, OrderChange change) {
        String was = change.was()
                .filter(OrderedPressure::stands)
                .map(old -> figures.text(old.figure()))
                .orElse("none");
        if (change.is().isEmpty()) {
            table.row(figures.text(change.length()), was, "taken out", "", "", "", "");
            return;
        }
        OrderedPressure now = change.is().get();
        String figure = now.stands() ? figures.text(now.figure()) : "refused";
        List<Html> cells = List.of(
                Html.text(figures.text(change.length())),
                Html.text(was),
                Html.tag("strong", figure),
                Html.text(figures.text(now.flow())),
                Html.text(figures.text(now.tip())),
                Html.text(figures.text(now.reaction())),
                Html.text(remark(change, now)));
        table.row("", cells);
    }

    private String remark(OrderChange change, OrderedPressure now) {
        if (!now.stands()) {
            return String.join(" ", now.refusal());
        }
        String changed = order.before().isPresent() && change.changed() ? "changed" : "";
        String untested = now.tested() ? "" : "untested";
        return changed + (changed.isEmpty() || untested.isEmpty() ? "" : ", ") + untested;
    }
}
