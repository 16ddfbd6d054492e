package org.hosewright.evidence.plan;

/** What makes one list of readings better than another. */
public enum Optimality {
    /** How well the decided numbers come out, each in the steps that it is decided in. */
    I("I"),
    /** How well all unknowns come out together: the determinant of their information. */
    D("D");

    private final String word;

    Optimality(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
