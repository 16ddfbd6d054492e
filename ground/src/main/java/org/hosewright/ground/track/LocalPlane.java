package org.hosewright.ground.track;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import org.hosewright.hydraulics.error.InvalidInput;

/** A plane that touches the earth at a place: every point at its true distance and bearing from there.
 *
 * @param origin where the plane touches
 * @validFor within {@link #RADIUS_m} of the origin
 * @accuracy between two points 5 km from the origin distances are off by less than one part in a million
 */
public record LocalPlane(Position origin) {
    /** No stretch of hose goes further [m]. */
    public static final double RADIUS_m = 100_000;

    /** A point of the plane.
     *
     * @param east_m of the origin [m]
     * @param north_m of the origin [m]
     */
    public record Point(double east_m, double north_m) {
        public double distance_m(Point other) {
            return Math.sqrt((east_m - other.east_m) * (east_m - other.east_m)
                    + (north_m - other.north_m) * (north_m - other.north_m));
        }
    }

    /** A place on the plane.
     *
     * @throws InvalidInput further away than the plane is good for, as with latitude and longitude swapped
     */
    public Point point(Position position) {
        GeodesicData to = Earth.inverse(origin, position, GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
        if (!(to.s12 <= RADIUS_m)) {
            String away = Math.round(to.s12 / 1000) + " km from the first position";
            throw new InvalidInput("position", away, "positions of one walk, within 100 km of each other", "");
        }
        double bearing = Math.toRadians(to.azi1);
        return new Point(to.s12 * Math.sin(bearing), to.s12 * Math.cos(bearing));
    }

    /** The place of a point. */
    public Position position(Point point) {
        double bearing_deg = Math.toDegrees(Math.atan2(point.east_m(), point.north_m()));
        double distance_m = Math.sqrt(point.east_m() * point.east_m() + point.north_m() * point.north_m());
        GeodesicData there = Geodesic.WGS84.Direct(
                origin.latitude_deg(),
                origin.longitude_deg(),
                bearing_deg,
                distance_m,
                GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE);
        return new Position(there.lat2, there.lon2);
    }
}
