package org.hosewright.ground.stretch;

/** What a part of a stretch is there for. */
public enum PartKind {
    TO_DOOR("from the rig to the door"),
    INSIDE("inside, to the stairs and along halls"),
    STAIRS("up or down the stairs"),
    COVER("to cover the fire area"),
    SLACK("for corners and obstacles"),
    WORKING("to work with at the fire"),
    RESERVE("kept in reserve");

    private final String says;

    PartKind(String says) {
        this.says = says;
    }

    /** The words for people. */
    public String says() {
        return says;
    }
}
