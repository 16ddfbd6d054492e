package org.hosewright.documents;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.kit.Kit;

/** The invented companies' kits after a test night, and the cards they make. */
final class SampleCards {
    private SampleCards() {}

    /** Three packages in US units, one of them refused at many lengths. */
    static CardSet brindleFalls() {
        return set("brindle-falls.kit.yaml");
    }

    /** The same in SI. */
    static CardSet aldwickVale() {
        return set("aldwick-vale.kit.yaml");
    }

    static Kit kit(String name) {
        try (InputStream in = SampleCards.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IOException(name + " is not beside the tests");
            }
            return KitDocument.of(new String(in.readAllBytes(), StandardCharsets.UTF_8), name)
                    .kit();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CardSet set(String name) {
        return CardAnalysis.of(kit(name), "7c1f-09ae", LocalDate.of(2026, 5, 14), Rounding.Way.NEAREST);
    }
}
