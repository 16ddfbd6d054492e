package org.hosewright.files.track;

import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.walk.LineThere;
import org.hosewright.ledger.walk.SectionThere;
import org.hosewright.ledger.walk.WalkReport;

/** A section's end in words, for files that other programs show. */
final class SectionWords {
    private final QuantityShown shown;

    SectionWords(WalkReport report) {
        this.shown = QuantityShown.of(report.units());
    }

    String name(SectionThere there) {
        return "section " + there.mark().section();
    }

    String says(SectionThere there) {
        StringBuilder says = new StringBuilder();
        says.append(shown.text(there.mark().hose())).append(" of hose; ");
        says.append(shown.rise(there.mark().place().height()));
        there.line().ifPresent(line -> says.append("; ").append(says(line)));
        return says.toString();
    }

    private String says(LineThere line) {
        String needed = "pump " + shown.withBand(line.pump()) + ", "
                + shown.text(line.flow().value());
        if (line.isSafe()) {
            return needed;
        }
        return line.first().map(limit -> "not safe: " + limit.what() + "; ").orElse("not safe; ") + needed;
    }
}
