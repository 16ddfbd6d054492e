package org.hosewright.ground.track;

import java.util.List;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import org.hosewright.hydraulics.quantity.Length;

/** Distances on the WGS84 ellipsoid.
 *
 * @source C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87, 2013, as GeographicLib computes them
 * @accuracy 15 nm, by the library's own test set
 */
public final class Earth {
    private Earth() {}

    /** The shortest way between two places. On the map only: a straight line is never a length of hose. */
    public static Length distance(Position from, Position to) {
        return new Length(distance_m(from, to));
    }

    /** The sum of the distances from fix to fix, wandering of the receiver included. */
    public static Length rawSum(List<Fix> fixes) {
        double sum_m = 0;
        for (int i = 1; i < fixes.size(); i++) {
            sum_m += distance_m(fixes.get(i - 1).position(), fixes.get(i).position());
        }
        return new Length(sum_m);
    }

    static double distance_m(Position from, Position to) {
        return inverse(from, to, GeodesicMask.DISTANCE).s12;
    }

    static GeodesicData inverse(Position from, Position to, int mask) {
        return Geodesic.WGS84.Inverse(
                from.latitude_deg(), from.longitude_deg(), to.latitude_deg(), to.longitude_deg(), mask);
    }
}
