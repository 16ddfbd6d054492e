package org.hosewright.cli.text;

import java.util.List;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.lay.LayReport;

/** A lay solved, in plain text; a broken limit stands before the numbers. */
public final class LayText {
    private LayText() {}

    public static List<String> of(LayReport lay) {
        var shown = QuantityShown.of(lay.kit().units());
        var report = new Report();
        report.title(lay.kit().company() + ", " + lay.lay().laid().id());
        report.list("Beyond its limit", listBroken(lay.limits(), shown));
        var answer = new Columns("", "");
        answer.add("pump", shown.withBand(lay.pump()));
        lay.intake().ifPresent(intake -> answer.add("intake", shown.text(intake)));
        answer.add("flow", shown.withBand(lay.flow()));
        answer.add("at the tip", shown.text(lay.state().tip()));
        answer.add("reaction", shown.text(lay.state().reaction()));
        report.table("The line", answer);
        report.table("Limits, the most used first", limits(lay.limits(), shown));
        report.list("Keep in mind", lay.cautions());
        report.list("Assumed", lay.assumed());
        return report.lines();
    }

    static List<String> listBroken(List<Limit> limits, QuantityShown shown) {
        return limits.stream()
                .filter(Limit::broken)
                .map(limit -> limit.what() + ": " + shown.text(limit.at()) + ", above " + shown.text(limit.limit())
                        + " (" + limit.rule() + ")")
                .toList();
    }

    static Columns limits(List<Limit> limits, QuantityShown shown) {
        var table = new Columns("limit", "stands at", "of", "used");
        for (Limit limit : limits) {
            table.add(
                    limit.what(),
                    shown.text(limit.at()),
                    shown.text(limit.limit()),
                    Numbers.fixed(100 * limit.used(), 0) + " %");
        }
        return table;
    }
}
