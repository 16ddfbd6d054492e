package org.hosewright.ground.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EarthTest {
    /** The published distances carry ten decimals of a metre; a micrometre is far below any use [m]. */
    private static final double PUBLISHED_m = 1e-6;

    /** On the plane and back, within 1 km of its origin [m]: a hair. */
    private static final double ON_PLANE_m = 1e-4;

    /** source: C. F. F. Karney, GeographicLib, test set for geodesics (the cases of its own unit tests, distance s12). */
    @ParameterizedTest
    @CsvSource({
        "35.60777, -139.44815, -11.17491, -69.95921, 8935244.5604818305",
        "55.52454, 106.05087, 77.03196, -162.81766, 4105086.1713924406",
        "-21.97856, 142.59065, 41.84138, 98.56635, 8394328.894657671",
        "-66.99028, 112.2363, -12.70631, -74.09656, 11150344.2312080241",
        "-17.42761, 173.34268, -15.84784, 5.93557, 16076603.1631180673",
        "32.84994, 48.28919, -56.28556, -157.70868, 16727068.9438164461"
    })
    void geodesicDistanceMatchesPublished(double lat1, double lon1, double lat2, double lon2, double distance_m) {
        double found_m = Earth.distance(new Position(lat1, lon1), new Position(lat2, lon2))
                .metres();
        assertThat(found_m).isCloseTo(distance_m, within(PUBLISHED_m));
    }

    @Test
    void acrossTheAntimeridianTheShortWayHolds() {
        double across_m = Earth.distance(new Position(52, 179.9995), new Position(52, -179.9995))
                .metres();
        double elsewhere_m = Earth.distance(new Position(52, 9.9995), new Position(52, 10.0005))
                .metres();
        assertThat(across_m).isCloseTo(elsewhere_m, within(PUBLISHED_m));
    }

    @Test
    void planeAgainstGeodesicAgrees() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 1000; i++) {
            double longitude = i % 2 == 0 ? 179.9999 : -72.6;
            Position origin = new Position(-80 + 160 * random.nextDouble(), longitude);
            LocalPlane plane = new LocalPlane(origin);
            var one = new LocalPlane.Point(1000 * random.nextDouble() - 500, 1000 * random.nextDouble() - 500);
            var other = new LocalPlane.Point(1000 * random.nextDouble() - 500, 1000 * random.nextDouble() - 500);
            double geodesic_m =
                    Earth.distance(plane.position(one), plane.position(other)).metres();
            assertThat(one.distance_m(other)).as("case " + i).isCloseTo(geodesic_m, within(ON_PLANE_m));
            assertThat(plane.point(plane.position(one)).distance_m(one)).isCloseTo(0, within(ON_PLANE_m));
        }
    }

    @Test
    void placesOffTheEarthRefused() {
        assertThatThrownBy(() -> new Position(90.1, 0))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("latitude");
        assertThatThrownBy(() -> new Position(0, 180.5)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Position(Double.NaN, 0)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void positionFarFromTheWalkRefused() {
        LocalPlane plane = new LocalPlane(new Position(44.1, -72.6));
        assertThatThrownBy(() -> plane.point(new Position(-72.6, 44.1)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("km from the first position");
    }
}
