package org.hosewright.documents.ground;

import java.util.List;
import java.util.stream.Stream;

/** How one page is shared out: what is said comes first, the profile and the map take what is left.
 *
 * @param profile height of the profile [mm]
 * @param map height of the map; 0 where there is no room for one [mm]
 */
record OnePage(double profile, double map) {
    /** Between what always stands on the page and its lower edge, on the lower of the two papers [mm]. */
    private static final double ROOM_mm = 185;

    private static final double ROW_mm = 5.2;
    private static final double LINE_mm = 3.7;
    private static final int LETTERS_A_LINE = 112;

    /** Lower than this a profile says nothing. */
    private static final double LEAST_PROFILE_mm = 53;

    private static final double MOST_PROFILE_mm = 82;
    private static final double[] MAPS_mm = {44, 30};

    /** Above and below a map. */
    private static final double AROUND_mm = 4;

    /** The page with so many lines of its table and these sentences. */
    static OnePage of(int rows, List<String> cautions, List<String> assumed) {
        int lines = Stream.concat(cautions.stream(), assumed.stream())
                .mapToInt(says -> 1 + says.length() / LETTERS_A_LINE)
                .sum();
        double left_mm = ROOM_mm - ROW_mm * rows - LINE_mm * lines;
        for (double map : MAPS_mm) {
            if (left_mm - map - AROUND_mm >= LEAST_PROFILE_mm) {
                return new OnePage(Math.min(MOST_PROFILE_mm, left_mm - map - AROUND_mm), map);
            }
        }
        return new OnePage(Math.min(MOST_PROFILE_mm, Math.max(LEAST_PROFILE_mm, left_mm)), 0);
    }
}
