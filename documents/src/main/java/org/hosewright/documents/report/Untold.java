package org.hosewright.documents.report;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.press.Html;
import org.hosewright.ledger.drill.DrillReport;

/** What the night cannot tell, why, and which reading would settle it. */
final class Untold {
    private Untold() {}

    static Html html(DrillReport report) {
        List<Html> pieces = new ArrayList<>();
        report.calibration()
                .withheld()
                .forEach(missing -> pieces.add(Html.tag(
                        "p",
                        Html.tag("strong", Figures.sentence(missing.what()) + ". "),
                        Html.text(missing.why() + " " + missing.needs()))));
        report.calibration()
                .belief()
                .stop()
                .ifPresent(says -> pieces.add(Html.tag("p", Html.text(Figures.sentence(says) + "."))));
        report.calibration()
                .nextReading()
                .ifPresent(next -> pieces.add(Html.tag(
                        "p", Html.tag("strong", "The reading that would tell most. "), Html.text(next.says()))));
        return Html.all(pieces);
    }
}
