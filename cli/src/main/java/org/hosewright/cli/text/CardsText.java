package org.hosewright.cli.text;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;

/** Which papers were written, and which figures were refused, in plain text. */
public final class CardsText {
    private CardsText() {}

    public static List<String> of(CardSet set, List<Path> files) {
        var report = new Report();
        report.title(set.kit().company() + ", revision " + set.revision() + " of " + set.made() + ": "
                + Stamp.UNSIGNED.words());
        files.forEach(file -> report.say(file.toString()));
        report.list("Refused, and left off the sheets", listRefused(set));
        report.list("Assumed", set.assumed());
        return report.lines();
    }

    /** Each figure that failed a check, as a sentence. */
    public static List<String> listRefused(CardSet set) {
        var shown = QuantityShown.of(set.kit().units());
        var refused = new ArrayList<String>();
        for (EngineCard engine : set.engines()) {
            for (CardLine line : engine.lines()) {
                line.entries().stream()
                        .filter(entry -> !entry.stands())
                        .forEach(entry -> refused.add(refusal(line, entry, shown)));
            }
        }
        return refused;
    }

    private static String refusal(CardLine line, CardEntry entry, QuantityShown shown) {
        return line.hosePackage().id() + " at " + shown.text(entry.length()) + ": " + String.join(" ", entry.refusal());
    }
}
