package org.hosewright.ground.terrain;

import java.nio.ShortBuffer;
import java.util.Optional;
import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;

/** One degree of the earth as a square of heights, the first row in the north; straight between four of them.
 *
 * @source NASA, SRTM Topography, documentation of version 2.1: rows from the north, edges shared with the neighbours,
 *     -32768 where nothing is known
 */
public final class HeightTile implements Terrain {
    /** A height that is not known. */
    public static final short VOID = -32768;

    private final String name;
    private final int south_deg;
    private final int west_deg;
    private final int side;
    private final ShortBuffer heights_m;

    /** Makes a tile.
     *
     * @param name of the file, as shown
     * @param south_deg latitude of its southern edge [degrees]
     * @param west_deg longitude of its western edge [degrees]
     * @param side heights along an edge, both ends counted
     * @param heights_m row by row from the north-west corner [m]; side times side of them
     * @throws InvalidInput another count of heights
     */
    public HeightTile(String name, int south_deg, int west_deg, int side, ShortBuffer heights_m) {
        if (side < 2 || heights_m.remaining() != side * side) {
            throw new InvalidInput(
                    "heights", heights_m.remaining() + " of them", "a square of " + side + " by " + side, name);
        }
        this.name = name;
        this.south_deg = south_deg;
        this.west_deg = west_deg;
        this.side = side;
        this.heights_m = heights_m.asReadOnlyBuffer();
    }

    @Override
    public Optional<Length> findHeight(Position position) {
        double up = (position.latitude_deg() - south_deg) * (side - 1);
        double right = (position.longitude_deg() - west_deg) * (side - 1);
        boolean within = up >= 0 && up <= side - 1 && right >= 0 && right <= side - 1;
        return within ? between(up, right) : Optional.empty();
    }

    /** Straight between the four heights around a place; empty where one that counts is a void. */
    private Optional<Length> between(double up, double right) {
        int low = Math.min(side - 2, (int) up);
        int left = Math.min(side - 2, (int) right);
        double height_m = 0;
        for (int i = 0; i <= 1; i++) {
            for (int j = 0; j <= 1; j++) {
                double north = i == 1 ? up - low : 1 - (up - low);
                double east = j == 1 ? right - left : 1 - (right - left);
                double share = north * east;
                short corner = at(low + i, left + j);
                if (share > 0 && corner == VOID) {
                    return Optional.empty();
                }
                height_m += share > 0 ? share * corner : 0;
            }
        }
        return Optional.of(new Length(height_m));
    }

    private short at(int up, int right) {
        return heights_m.get((side - 1 - up) * side + right);
    }

    @Override
    public String source() {
        return "terrain file " + name;
    }
}
