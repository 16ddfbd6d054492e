package org.hosewright.ground.track;

/** Where the heights in a track come from. */
public enum HeightOrigin {
    /** The air pressure, as the recorder says. */
    BAROMETER("barometer"),
    /** The receiver, or nobody said: the weakest. */
    RECEIVER("receiver");

    private final String word;

    HeightOrigin(String word) {
        this.word = word;
    }

    /** The word in files. */
    public String word() {
        return word;
    }
}
