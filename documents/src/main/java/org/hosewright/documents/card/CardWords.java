package org.hosewright.documents.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.press.Html;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;

/** The sentences of the cards, said the same way on each of them. */
final class CardWords {
    private CardWords() {}

    /** What stands where a kit has no package. */
    static Html none() {
        return Html.tag(
                "p",
                "The kit has no package: there is nothing to pump by. A package names an engine, a"
                        + " discharge, the hose in laying order and the nozzle.");
    }

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

    /** Why boxes are refused, a sentence for each reason; the numbers that failed stay on the page behind. */
    static List<String> refusals(CardLine line, Figures figures) {
        Map<String, List<String>> lengths = new LinkedHashMap<>();
        for (CardEntry entry : line.entries()) {
            entry.check().checks().stream()
                    .filter(c -> !c.passed())
                    .forEach(c -> lengths.computeIfAbsent(c.what(), w -> new ArrayList<>())
                            .add(figures.text(entry.length())));
        }
        return lengths.entrySet().stream()
                .map(e -> "Refused as rounded at " + String.join(", ", e.getValue()) + ": " + e.getKey() + ".")
                .toList();
    }

    /** Why one box is refused. */
    static List<String> why(CardEntry entry) {
        return entry.check().checks().stream()
                .filter(c -> !c.passed())
                .map(c -> "Fails: " + c.what() + ".")
                .toList();
    }

    static String stops(CardLine line, Figures figures) {
        String longest = line.longestSafe().metres() > 0
                ? "Longest safe stretch, level: " + figures.text(line.longestSafe()) + ". What stops it: "
                : "No length is safe at what the nozzle is meant for. What stops it: ";
        return longest + line.stoppedBy() + ". Each floor up, " + figures.text(line.floorHeight()) + ": add "
                + figures.text(line.floorAdder()) + never(line, figures) + ".";
    }

    /** The bound that floors do not lift. */
    static String never(CardLine line, Figures figures) {
        return line.mostGauge()
                .map(most -> ", never above " + figures.text(most))
                .orElse("");
    }

    /** What to keep in mind at one box: its own cautions, and those of the line that belong to no length. */
    static List<String> cautions(CardLine line, CardEntry entry) {
        List<String> ofLengths = line.entries().stream()
                .flatMap(e -> e.check().cautions().stream())
                .toList();
        List<String> cautions = new ArrayList<>(entry.check().cautions());
        line.cautions().stream().filter(c -> !ofLengths.contains(c)).forEach(cautions::add);
        return cautions;
    }

    static String evidence(CardLine line) {
        return Figures.sentence(line.evidence()) + ".";
    }
}
