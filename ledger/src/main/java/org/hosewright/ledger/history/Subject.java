package org.hosewright.ledger.history;

/** What an act can be done to. */
public enum Subject {
    KIT("kit"),
    DRILL("drill"),
    ORDER("order");

    private final String word;

    Subject(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
