package org.hosewright.documents.stamp;

/** What stands across every page of a sheet that nobody has signed. */
public enum Stamp {
    /** Real numbers without the signature that makes them an order. */
    UNSIGNED("UNSIGNED - NOT FOR USE", "No one has signed these numbers. They are not an order: do not pump by them."),
    /** The invented company's numbers. */
    DEMO("DEMO - NOT FOR USE", "An invented company's numbers, for showing only. Do not pump by them.");

    private final String words;
    private final String meaning;

    Stamp(String words, String meaning) {
        this.words = words;
        this.meaning = meaning;
    }

    /** The words across the page. */
    public String words() {
        return words;
    }

    /** What they mean, as a sentence. */
    public String meaning() {
        return meaning;
    }
}
