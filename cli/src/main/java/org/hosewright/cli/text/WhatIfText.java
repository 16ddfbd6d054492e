package org.hosewright.cli.text;

import java.util.Optional;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.lay.LayWhatIf;
import org.hosewright.ledger.lay.PanelReading;

/** What the panel's gauges and the tips show before and after a change; limits that it breaks stand first. */
final class WhatIfText {
    private WhatIfText() {}

    static void say(Report report, LayWhatIf one, QuantityShown shown) {
        String title = "If " + one.whatIf().says() + ", pump and gates untouched";
        report.list(title + ": by radio first", one.radio());
        report.list(title + ": beyond its limit", LayText.listBroken(one.broken(), shown));
        report.table(title, table(one, shown));
        report.list(title + ": keep in mind", one.cautions());
    }

    private static Columns table(LayWhatIf one, QuantityShown shown) {
        var table = new Columns("gauge", "now", "then");
        for (int i = 0; i < one.now().size(); i++) {
            table.add(
                    one.now().get(i).gauge(),
                    gauge(one.now().get(i), shown),
                    gauge(one.then().get(i), shown));
        }
        for (AtTip tip : one.whatIf().before().tips()) {
            String id = tip.outlet().id();
            Optional<AtTip> then = one.whatIf().then().tips().stream()
                    .filter(other -> other.outlet().id().equals(id))
                    .findFirst();
            table.add(
                    "tip " + id,
                    at(tip, shown),
                    then.map(other -> at(other, shown)).orElse(""));
        }
        return table;
    }

    private static String gauge(PanelReading reading, QuantityShown shown) {
        return shown.text(reading.pressure())
                + reading.flow().map(flow -> ", " + shown.text(flow)).orElse("");
    }

    private static String at(AtTip tip, QuantityShown shown) {
        return tip.outlet().shut()
                ? "shut"
                : shown.text(tip.state().flow()) + " at "
                        + shown.text(tip.state().tip()) + ", reaction "
                        + shown.text(tip.state().reaction());
    }
}
