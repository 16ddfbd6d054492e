package org.hosewright.files.exchange;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import org.hosewright.files.json.JsonObject;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.canonical.CanonicalJson;
import org.hosewright.ledger.exchange.Neighbour;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.leaf.Leaf;

/** What is kept of a neighbour as text: who confirmed its key and when, and its last file, character for character. */
final class NeighbourText {
    private static final int FORMAT = 1;
    private static final Set<String> KEYS = Set.of("format", "confirmedBy", "confirmedAt", "file");

    private NeighbourText() {}

    static String write(SignedHandover last, String confirmedBy, Instant confirmedAt) {
        return CanonicalJson.text(Map.of(
                "format",
                FORMAT,
                "confirmedBy",
                confirmedBy,
                "confirmedAt",
                confirmedAt.toString(),
                "file",
                last.text()));
    }

    /** The neighbour that a leaf holds; the signature of its file is verified again. */
    static Neighbour read(Leaf leaf) {
        String where = "neighbour " + leaf.id();
        JsonObject json = JsonObject.of(leaf.text(), where).only(KEYS).edition(FORMAT);
        byte[] file = json.text("file").getBytes(StandardCharsets.UTF_8);
        return new Neighbour(
                leaf.id(),
                leaf.version(),
                ExchangeFile.read(file, where),
                json.text("confirmedBy"),
                moment(json, where));
    }

    private static Instant moment(JsonObject json, String where) {
        try {
            return Instant.parse(json.text("confirmedAt"));
        } catch (DateTimeException e) {
            throw new InvalidInput("confirmedAt", json.text("confirmedAt"), "a moment", where);
        }
    }
}
