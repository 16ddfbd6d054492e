package org.hosewright.ground.track;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;

/** A walk as it was recorded, in order.
 *
 * @param name of the walk; may be empty
 * @param fixes two or more, at most {@link #MOST_FIXES}
 * @param marks what was marked on the way
 * @param heights where the fixes' elevations come from
 */
public record Track(String name, List<Fix> fixes, List<TrackMark> marks, HeightOrigin heights) {
    /** More than any walk of a stretch: a day and a half at one a second. */
    public static final int MOST_FIXES = 100_000;

    /** More than anybody taps on one walk. */
    public static final int MOST_MARKS = 10_000;

    public Track {
        fixes = List.copyOf(fixes);
        marks = List.copyOf(marks);
        if (fixes.size() < 2 || fixes.size() > MOST_FIXES) {
            String count = fixes.size() + (fixes.size() == 1 ? " position" : " positions");
            throw new InvalidInput("track", count, "2 to " + MOST_FIXES + " positions", "");
        }
        if (marks.size() > MOST_MARKS) {
            throw new InvalidInput("track", marks.size() + " marks", "at most " + MOST_MARKS + " marks", "");
        }
        for (TrackMark mark : marks) {
            if (mark.at() >= fixes.size()) {
                throw new InvalidInput("place of a mark", String.valueOf(mark.at()), "the index of a position", "");
            }
        }
    }

    /** A walk without marks. */
    public static Track of(String name, List<Fix> fixes) {
        return new Track(name, fixes, List.of(), HeightOrigin.RECEIVER);
    }

    public Track withHeights(HeightOrigin origin) {
        return new Track(name, fixes, marks, origin);
    }

    /** True where every fix has its time: only then can the way be told from the receiver's wandering. */
    public boolean isTimed() {
        return fixes.stream().allMatch(fix -> fix.time().isPresent());
    }

    public Fix first() {
        return fixes.get(0);
    }

    public Fix last() {
        return fixes.get(fixes.size() - 1);
    }
}
