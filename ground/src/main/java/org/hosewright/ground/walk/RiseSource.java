package org.hosewright.ground.walk;

/** Where a rise comes from; it is shown beside every height. */
public enum RiseSource {
    BY_HAND("by-hand", "entered by hand"),
    BAROMETER("barometer", "the recorder's barometer"),
    TERRAIN("terrain", "a terrain file"),
    RECEIVER("receiver", "the receiver's own heights, which wander"),
    NONE("none", "nothing: taken as level");

    private final String word;
    private final String says;

    RiseSource(String word, String says) {
        this.word = word;
        this.says = says;
    }

    /** The word in results. */
    public String word() {
        return word;
    }

    /** The words for people, fit to follow "from". */
    public String says() {
        return says;
    }
}
