package org.hosewright.hydraulics.profile;

/** Which part of a text stands at its x. */
public enum Anchor {
    START("start"),
    MIDDLE("middle"),
    END("end");

    private final String word;

    Anchor(String word) {
        this.word = word;
    }

    /** The word in results. */
    public String word() {
        return word;
    }
}
