package org.hosewright.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;

/** What the cards of a set print, as tests look for it. */
final class CardText {
    private CardText() {}

    static List<String> papers(CardSet set) {
        return List.of(
                new Pdf(Papers.pumpCard(set, Stamp.UNSIGNED)).text(),
                new Pdf(Papers.tags(set, Stamp.UNSIGNED)).text(),
                new Pdf(Papers.pocketCard(set, Stamp.UNSIGNED)).text());
    }

    static List<CardLine> lines(CardSet set) {
        return set.engines().stream().flatMap(e -> e.lines().stream()).toList();
    }

    /** What a box that stands prints, in one piece; of a refused one, only its length. */
    static String wanted(CardSet set, CardEntry entry) {
        return entry.stands()
                ? String.join(
                        " ",
                        text(set, entry.gauge()),
                        text(set, entry.check().state().flow()),
                        "tip",
                        text(set, entry.check().state().tip()),
                        text(set, entry.check().state().reaction()))
                : text(set, entry.length());
    }

    static List<String> texts(CardSet set, Quantity... quantities) {
        return List.of(quantities).stream().map(q -> text(set, q)).toList();
    }

    static String text(CardSet set, Quantity quantity) {
        return QuantityShown.of(set.kit().units()).text(quantity);
    }

    /** Pressure and flow of each box of the panel card, in order. */
    static List<double[]> boxes(CardSet set, String text) {
        boolean us = set.kit().units() == UnitSystem.US;
        Pattern box = Pattern.compile(us ? "(\\d+) psi (\\d+) gpm tip" : "(\\d+) kPa (\\d+) L/min tip");
        List<double[]> boxes = new ArrayList<>();
        for (MatchResult found : box.matcher(text).results().toList()) {
            boxes.add(new double[] {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))});
        }
        return boxes;
    }
}
