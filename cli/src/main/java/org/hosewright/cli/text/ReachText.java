package org.hosewright.cli.text;

import java.util.List;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.reach.PackageReach;
import org.hosewright.ledger.reach.ReachReport;

/** How far each package goes, in plain text. */
public final class ReachText {
    private ReachText() {}

    public static List<String> of(ReachReport reach) {
        var shown = QuantityShown.of(reach.kit().units());
        var report = new Report();
        String ceiling = reach.ceiling()
                .map(pressure -> ", ceiling " + shown.text(pressure))
                .orElse("");
        report.title(reach.kit().company() + ", how far each line goes: " + shown.rise(reach.rise()) + ceiling);
        var table = new Columns("package", "safe to", "at best", "stopped by");
        for (PackageReach one : reach.packages()) {
            var result = one.result();
            table.add(
                    one.hosePackage().id(),
                    shown.text(result.longestSafe()),
                    shown.text(result.longest()) + " (" + result.sections() + " sections)",
                    result.stoppedBy());
        }
        report.table("Whole sections; 'safe to' holds with 95 % confidence", table);
        reach.packages()
                .forEach(one ->
                        report.list("Keep in mind for " + one.hosePackage().id(), one.cautions()));
        report.list("Assumed", reach.assumed());
        return report.lines();
    }
}
