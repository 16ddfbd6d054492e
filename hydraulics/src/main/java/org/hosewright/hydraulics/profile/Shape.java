package org.hosewright.hydraulics.profile;

/** The shape of a dot; it carries the meaning, colour only repeats it. */
public enum Shape {
    /** A reading in use, open inside. */
    CIRCLE("circle"),
    /** A reading set aside, filled, standing on a corner. */
    DIAMOND("diamond"),
    /** An end of the line, filled. */
    DISC("disc"),
    /** The longest stretch that holds with 95 % confidence, filled. */
    SQUARE("square");

    private final String word;

    Shape(String word) {
        this.word = word;
    }

    /** The word in results. */
    public String word() {
        return word;
    }
}
