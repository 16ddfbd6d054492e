package org.hosewright.files.lay;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.ledger.lay.LayChange;

/** The reader of what may happen to a lay, in one line of text. */
public final class WhatIfText {
    private static final String FORMS = "'a opens', 'a shuts', 'a tip fog-150', 'a tip slug-fog slug', 'a burst 3',"
            + " 'a kink 10 psi @ 100 gpm', 'a gate half', 'a gate 12 psi @ 100 gpm' or 'hydrant 75 %', where a is a"
            + " tip, a discharge or a join";

    private WhatIfText() {}

    /** The change that a text says.
     *
     * @throws InvalidInput it says none
     */
    public static LayChange parse(String text) {
        List<String> words = Arrays.asList(text.strip().split("\\s+"));
        if (words.size() < 2) {
            throw refused(text);
        }
        String rest = String.join(" ", words.subList(words.get(0).equals("hydrant") ? 1 : 2, words.size()));
        if (words.get(0).equals("hydrant")) {
            return new LayChange.WeakerHydrant(share(rest));
        }
        String place = words.get(0);
        return switch (words.get(1)) {
            case "opens", "shuts" -> turned(place, words, text);
            case "tip" -> tip(place, words, text);
            case "burst" -> burst(place, rest, text);
            case "kink" -> new LayChange.Kinked(place, loss(rest));
            case "gate" -> new LayChange.Gated(place, rest.equals("half") ? Optional.empty() : Optional.of(loss(rest)));
            default -> throw refused(text);
        };
    }

    private static LayChange turned(String place, List<String> words, String text) {
        if (words.size() != 2) {
            throw refused(text);
        }
        return new LayChange.Turned(place, words.get(1).equals("opens"));
    }

    private static LayChange tip(String place, List<String> words, String text) {
        if (words.size() < 3 || words.size() > 4) {
            throw refused(text);
        }
        return new LayChange.Tip(place, words.get(2), words.size() == 4 ? words.get(3) : Nozzle.ONLY);
    }

    private static LayChange burst(String place, String rest, String text) {
        if (!rest.matches("[1-9][0-9]?")) {
            throw refused(text);
        }
        return new LayChange.Burst(place, Integer.parseInt(rest));
    }

    private static PointLoss loss(String text) {
        return QuantityText.pointLoss(text).value();
    }

    private static Ratio share(String text) {
        return (Ratio) QuantityText.parse(Kind.RATIO, text);
    }

    private static InvalidInput refused(String text) {
        return new InvalidInput("what if", text, FORMS, "");
    }
}
