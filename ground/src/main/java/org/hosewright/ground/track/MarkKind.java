package org.hosewright.ground.track;

import java.util.Arrays;
import java.util.Optional;

/** What a person marks with one tap while walking a stretch. */
public enum MarkKind {
    COUPLING("coupling"),
    CORNER("corner"),
    STAIR("stair"),
    DOOR("door"),
    OBSTACLE("obstacle");

    private final String word;

    MarkKind(String word) {
        this.word = word;
    }

    /** The word on pages and in files. */
    public String word() {
        return word;
    }

    public static Optional<MarkKind> find(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
