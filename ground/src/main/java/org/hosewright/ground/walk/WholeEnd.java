package org.hosewright.ground.walk;

import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Position;

/** Where a drawn way ends if its end is moved along its last leg, so that whole sections of hose reach just there. */
public final class WholeEnd {
    /** So much short of the coupling that digits lost on the way do not ask for one section more [m]. */
    private static final double SHORT_m = 0.02;

    private WholeEnd() {}

    /** The end at the nearest whole count of sections, one at the least; at the next one up where the nearest lies before
     * the last leg.
     *
     * @param walk a way as drawn
     */
    public static Position of(Walk walk) {
        WayPoint end = walk.way().get(walk.way().size() - 1);
        WayPoint corner = walk.way().get(walk.way().size() - 2);
        double section_m = walk.section().metres();
        double length_m = end.along().value().metres();
        double from_m = corner.along().value().metres();
        double whole_m = Math.max(1, Math.round(length_m / section_m)) * section_m - SHORT_m;
        double to_m = whole_m > from_m ? whole_m : Math.ceil(length_m / section_m) * section_m - SHORT_m;
        if (!(length_m > from_m)) {
            return end.position();
        }
        LocalPlane plane = new LocalPlane(corner.position());
        LocalPlane.Point leg = plane.point(end.position());
        double share = (to_m - from_m) / (length_m - from_m);
        return plane.position(new LocalPlane.Point(share * leg.east_m(), share * leg.north_m()));
    }
}
