package org.hosewright.documents.order;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.order.OrderInFull;

/** What every sheet beside an order has in common: its head, its stamp, why it is stale, its last words. */
final class SideSheet {
    private SideSheet() {}

    static Sheet of(OrderInFull order, Stamp stamp, String question, List<Html> sections) {
        List<Html> body = new ArrayList<>();
        body.add(Parts.runningHead(stamp, order.kit().company(), order.name()));
        body.add(Parts.stamp(stamp));
        body.add(Html.tag("h1", question));
        body.add(
                Html.tag("p", order.kit().company() + ", " + order.name() + ".").in("subject"));
        body.add(Parts.list(order.whyStale()));
        body.addAll(sections);
        body.add(Html.tag("p", Parts.OVERRULED));
        return new Sheet(
                question + " " + order.name() + ", " + order.kit().company(),
                "report",
                new Figures(order.set().units()).paper(),
                stamp,
                StampGrid.WHOLE_PAGE,
                Html.all(body));
    }
}
