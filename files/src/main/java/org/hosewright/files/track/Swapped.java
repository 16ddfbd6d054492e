package org.hosewright.files.track;

import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.error.InvalidInput;

/** Whether latitude and longitude were written the wrong way round. */
public final class Swapped {
    /** South of this nobody lays hose, but swapped longitudes of half the earth lie there [degrees]. */
    private static final double SOUTHERNMOST_deg = -60;

    private Swapped() {}

    /** The position, unless it can only be one written the wrong way round.
     *
     * @throws InvalidInput off the earth, or in the Antarctic where the swapped position is not
     */
    public static Position check(double latitude_deg, double longitude_deg, String order, String where) {
        boolean off = Math.abs(latitude_deg) > 90 && Math.abs(longitude_deg) <= 90;
        boolean cold = latitude_deg < SOUTHERNMOST_deg && longitude_deg >= SOUTHERNMOST_deg && longitude_deg <= 90;
        if (off || cold) {
            String given = "latitude " + latitude_deg + ", longitude " + longitude_deg;
            throw new InvalidInput("position", given, order + "; latitude and longitude look swapped", where);
        }
        try {
            return new Position(latitude_deg, longitude_deg);
        } catch (InvalidInput refused) {
            throw refused.at(where);
        }
    }
}
