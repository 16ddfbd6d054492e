package org.hosewright.ledger.history;

/** What an act can be done to. */
public enum Subject {
    KIT("kit"),
    DRILL("drill"),
    ORDER("order"),
    /** Its id is the kind of the leaf, a stroke, and the id of the leaf. */
    LEAF("leaf"),
    PERSON("person");

    private final String word;

    Subject(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
