package org.hosewright.hydraulics.quantity;

/** The kinds of plain quantity that people write down with a single unit. */
public enum Kind {
    PRESSURE("pressure"),
    FLOW("flow"),
    LENGTH("length"),
    FORCE("force"),
    VOLUME("volume"),
    TIME("time"),
    TEMPERATURE("temperature"),
    RATIO("share");

    private final String word;

    Kind(String word) {
        this.word = word;
    }

    /** The word for it in a sentence. */
    public String word() {
        return word;
    }
}
