package org.hosewright.files.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.ground.track.Earth;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.walk.RiseSource;
import org.hosewright.ground.walk.Walk;
import org.hosewright.ground.walk.WalkQuestion;
import org.hosewright.hydraulics.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Terrain and tracks as others distribute them. */
@Tag("real-data")
class RealGroundTest {
    private static final Path DATA = Path.of(System.getProperty("hosewright.realData", "."));

    /** Known summits and towns against a tile whose heights lie 90 m apart and are good to some 10 m [m]. */
    private static final double TERRAIN_m = 40;

    /** The plane against the geodesic over a few kilometres, as a share [1]. */
    private static final double PLANE = 1e-6;

    private static double height_m(Terrain terrain, double latitude, double longitude) {
        return terrain.findHeight(new Position(latitude, longitude))
                .orElseThrow()
                .metres();
    }

    /** source: NASA SRTM tiles; heights of places as maps give them, from memory: Bayreuth town hall some 345 m, Schneeberg 1051 m. */
    @Test
    void heightsOfKnownPlacesMatchesPublished() {
        Terrain south = TerrainFile.read(DATA.resolve("dem/N49E011.hgt.zip"));
        Terrain north = TerrainFile.read(DATA.resolve("dem/N50E011.hgt.zip"));
        double bayreuth_m = height_m(south, 49.9456, 11.5713);
        double schneeberg_m = height_m(north, 50.0517, 11.8531);
        System.out.println("Bayreuth " + bayreuth_m + " m, Schneeberg " + schneeberg_m + " m");
        assertThat(bayreuth_m).isCloseTo(345, within(TERRAIN_m));
        assertThat(schneeberg_m).isCloseTo(1051, within(TERRAIN_m));
    }

    @Test
    void neighbouringTilesAlongTheirEdgeAgree() {
        Terrain south = TerrainFile.read(DATA.resolve("dem/N49E011.hgt.zip"));
        Terrain north = TerrainFile.read(DATA.resolve("dem/N50E011.hgt.zip"));
        for (int i = 0; i <= 1200; i += 7) {
            double longitude = 11 + i / 1200.0;
            assertThat(south.findHeight(new Position(50, longitude)))
                    .isEqualTo(north.findHeight(new Position(50, longitude)));
        }
    }

    @Test
    void tracksOfOthersHold() {
        for (String name : new String[] {"andorra_for_map_matching.gpx", "graphhopper-test1.gpx"}) {
            Track track = TrackFile.read(DATA.resolve("gpx").resolve(name));
            Walk walk = Walk.of(WalkQuestion.of(track, new Length(50)));
            double raw_m = Earth.rawSum(track.fixes()).metres();
            System.out.println(name + ": " + track.fixes().size() + " positions, " + raw_m + " m");
            assertThat(walk.distance().value().metres()).isCloseTo(raw_m, within(PLANE * raw_m));
            assertThat(walk.distance().standardError()).isEmpty();
        }
    }

    @Test
    void risesOfTerrainAndTrackHold() {
        Track track = TrackFile.read(DATA.resolve("gpx/andorra_for_map_matching.gpx"));
        Walk walk = Walk.of(WalkQuestion.of(track, new Length(50))
                .withTerrain(TerrainFile.read(DATA.resolve("dem/N49E011.hgt.zip"))));
        assertThat(walk.rise().source()).isEqualTo(RiseSource.RECEIVER);
        assertThat(walk.assumed()).anyMatch(says -> says.contains("does not tell the height of the whole way"));
    }
}
