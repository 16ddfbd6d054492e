package org.hosewright.documents.card;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hosewright.documents.part.Figures;
import org.hosewright.hydraulics.order.Check;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;

/** The sentences of the cards, said the same way on each of them. */
final class CardWords {
    private CardWords() {}

    static String revision(CardSet set) {
        return "revision " + set.revision() + ", " + Figures.day(set.made());
    }

    /** What the box's line gives at the nozzle. */
    static List<String> gives(CardEntry entry, Figures figures) {
        return List.of(
                figures.text(entry.check().state().flow()),
                "tip " + figures.text(entry.check().state().tip()),
                figures.text(entry.check().state().reaction()));
    }

    /** What the named gauge must show for the nearest pressure that passes, where one does. */
    static Optional<Pressure> findNearest(CardEntry entry) {
        double offset_Pa =
                entry.gauge().pascals() - entry.check().ordered().pascals();
        return entry.check().wouldDo().map(p -> new Pressure(p.pascals() + offset_Pa));
    }

    /** Why boxes stand empty, a sentence each. */
    static List<String> refusals(CardLine line, Figures figures) {
        return line.entries().stream()
                .filter(e -> !e.check().passed())
                .map(e -> refusal(e, figures))
                .toList();
    }

    private static String refusal(CardEntry entry, Figures figures) {
        String why = entry.check().checks().stream()
                .filter(c -> !c.passed())
                .map(Check::says)
                .collect(Collectors.joining(" "));
        String nearest = findNearest(entry)
                .map(p -> " Nearest that would do: " + figures.text(p) + ".")
                .orElse(" No pressure would do.");
        return figures.text(entry.length()) + " refused: " + why + nearest;
    }

    static String stops(CardLine line, Figures figures) {
        return "Longest safe stretch, level: " + figures.text(line.longestSafe()) + ". What stops it: "
                + line.stoppedBy() + ". Each floor up, " + figures.text(line.floorHeight()) + ": add "
                + figures.text(line.floorAdder()) + ".";
    }

    static String evidence(CardLine line) {
        return Figures.sentence(line.evidence()) + ".";
    }
}
