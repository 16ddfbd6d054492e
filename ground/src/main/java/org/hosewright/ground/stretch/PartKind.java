package org.hosewright.ground.stretch;

/** What a part of a stretch is there for. */
public enum PartKind {
    TO_DOOR("to-door", "from the rig to the door"),
    INSIDE("inside", "inside, to the stairs and along halls"),
    STAIRS("stairs", "up or down the stairs"),
    COVER("cover", "to cover the fire area"),
    SLACK("slack", "for corners and obstacles"),
    WORKING("working", "to work with at the fire"),
    RESERVE("reserve", "kept in reserve");

    private final String word;
    private final String says;

    PartKind(String word, String says) {
        this.word = word;
        this.says = says;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** The words for people. */
    public String says() {
        return says;
    }
}
