package org.hosewright.documents;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hosewright.documents.stamp.SheetCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;
import org.hosewright.evidence.plan.Budget;
import org.hosewright.evidence.plan.Optimality;
import org.hosewright.evidence.plan.Pace;
import org.hosewright.evidence.plan.Question;
import org.hosewright.files.exchange.ExchangeFile;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.history.Mark;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderBook;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderRevision;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.Staleness;
import org.hosewright.ledger.plan.PlanAnalysis;
import org.hosewright.ledger.plan.PlanAsked;
import org.hosewright.ledger.plan.PlanReport;

/** The invented companies' kits and nights, and the papers they make. */
final class Samples {
    static final LocalDate MADE = LocalDate.of(2026, 5, 14);
    static final String REVISION = "7c1f-09ae";

    private static final SheetCode CODE = new SheetCode(1, "engine-41", "3f2a90c1");

    /** Every paper once, for tests that only look. */
    static final Map<String, Pdf> PAPERS = papers();

    private Samples() {}

    /** Three packages in US units, one of them refused at many lengths. */
    static CardSet brindleFalls() {
        return cards(beside("brindle-falls.kit.yaml"));
    }

    /** One package in SI. */
    static CardSet aldwickVale() {
        return cards(beside("aldwick-vale.kit.yaml"));
    }

    static CardSet cards(String kitText) {
        return CardAnalysis.of(kit(kitText), REVISION, MADE, Rounding.Way.NEAREST);
    }

    static Kit kit(String text) {
        return KitDocument.of(text, "kit.yaml").kit();
    }

    /** The example night. */
    static DrillReport drillNight() {
        return night("drill-night.kit.yaml", Map.of());
    }

    /** A night planned for the invented company's crosslay. */
    static PlanReport plannedNight() {
        return PlanAnalysis.of(
                kit(example("brindle-falls.kit.yaml")),
                new PlanAsked(
                        "crosslay-1-200",
                        Set.of(Question.HOSE, Question.PIPING),
                        LocalDate.of(2026, 6, 12),
                        Optional.of(Length.ofFeet(600)),
                        Length.ofFeet(8),
                        Optional.empty(),
                        Optional.empty(),
                        new Budget(Budget.EVENING, Optional.empty(), Pace.USUAL),
                        Optimality.I));
    }

    static DrillReport night(String kitName, Map<String, Ruling> rulings) {
        return night(kitName, rulings, List.of());
    }

    /** The example night, or only some of its rows. */
    static DrillReport night(String kitName, Map<String, Ruling> rulings, List<Integer> rows) {
        Kit kit = kit(example(kitName));
        String name = "drill-night.readings.csv";
        var readings = ReadingParser.parse(ReadingsFile.read(example(name), name), kit, name);
        List<Reading> kept =
                rows.isEmpty() ? readings : rows.stream().map(readings::get).toList();
        return DrillAnalysis.of("drill-night", Optional.of(LocalDate.of(2026, 5, 12)), kit, kept, rulings);
    }

    /** Every paper, in both systems and under both stamps. */
    static Map<String, Pdf> papers() {
        Map<String, Pdf> papers = new LinkedHashMap<>();
        papers.put("report", new Pdf(Papers.drillReport(drillNight(), Stamp.UNSIGNED)));
        papers.put("night", new Pdf(Papers.night(plannedNight(), Stamp.UNSIGNED)));
        papers.put("card", new Pdf(Papers.pumpCard(brindleFalls(), Stamp.UNSIGNED)));
        papers.put("card-si", new Pdf(Papers.pumpCard(aldwickVale(), Stamp.DEMO)));
        papers.put("tags", new Pdf(Papers.tags(brindleFalls(), Stamp.DEMO.bearing(CODE))));
        papers.put("tags-si", new Pdf(Papers.tags(aldwickVale(), Stamp.UNSIGNED)));
        papers.put("pocket", new Pdf(Papers.pocketCard(brindleFalls(), Stamp.UNSIGNED.bearing(CODE))));
        papers.put("pocket-si", new Pdf(Papers.pocketCard(aldwickVale(), Stamp.DEMO)));
        papers.put("order", new Pdf(Papers.order(order(), Stamp.UNSIGNED)));
        papers.put("changes", new Pdf(Papers.changes(order(), Stamp.UNSIGNED)));
        papers.put("readers", new Pdf(Papers.readers(order(), Stamp.UNSIGNED)));
        return papers;
    }

    /** What the invented neighbour hands over. */
    static SignedHandover handover() {
        String name = "aldwick-vale.exchange";
        return ExchangeFile.read(example(name).getBytes(StandardCharsets.UTF_8), name);
    }

    /** The first order of the invented company, not yet signed. */
    static OrderInFull order() {
        OrderSet set = OrderSet.of(brindleFalls(), Rounding.Way.NEAREST);
        Kit kit = brindleFalls().kit();
        var mark = new Mark(3, Instant.parse("2026-05-14T12:00:00Z"), "Training officer", "after the May test");
        var revision = new OrderRevision(1, "3f2a90c1", 2, mark, List.of());
        var book = new OrderBook(List.of(revision));
        return new OrderInFull(
                revision,
                book,
                set,
                kit,
                Optional.empty(),
                Staleness.of(set, kit, new Staleness.Standing(kit, List.of(), MADE)));
    }

    static String beside(String name) {
        try (InputStream in = Samples.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IOException(name + " is not beside the tests");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String example(String name) {
        try {
            return Files.readString(Path.of(System.getProperty("hosewright.root"), "examples", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
