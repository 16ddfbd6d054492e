package org.hosewright.ground.track;

import org.hosewright.hydraulics.quantity.Numbers;

/** A place on the earth, on the WGS84 ellipsoid.
 *
 * @param latitude_deg north positive, -90 to 90 [degrees]
 * @param longitude_deg east positive, -180 to 180 [degrees]
 */
public record Position(double latitude_deg, double longitude_deg) {
    public Position {
        Numbers.requireWithin("latitude", latitude_deg, -90, 90, "degrees");
        Numbers.requireWithin("longitude", longitude_deg, -180, 180, "degrees");
    }
}
