package org.hosewright.files.track;

/** The names that this program adds to GPX. */
final class Gpx {
    /** The namespace of its extension elements. */
    static final String NAMESPACE = "https://hosewright.org/gpx/1";

    /** The radius that holds two positions in three, as the receiver judged [m]. */
    static final String ACCURACY = "accuracy";

    /** The kind of a way point at which a section of hose ends. */
    static final String SECTION = "section";

    /** The kind of a track that was smoothed; not read back. */
    static final String SMOOTHED = "smoothed";

    /** What a recorder says of heights from the air pressure, in the track's source. */
    static final String BAROMETER = "barometer";

    /** A receiver's error where its dilution is 1 [m]; from common practice. */
    static final double PER_DILUTION_m = 5;

    private Gpx() {}
}
