package org.hosewright.files.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ShortBuffer;
import java.nio.file.Path;
import java.util.zip.ZipFile;
import org.hosewright.ground.terrain.HeightTile;
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

    private static final int SIDE = 1201;

    /** Whole metres times quarters that digits of a degree blur, on a slope of up to 100 m in 90 m [m]. */
    private static final double SUMMED_m = 1e-6;

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

    /** Every seventh square of a tile, read beside the reader: in its middle the mean of its four heights, nothing where one
     * of them is a void. source: NASA SRTM tiles, which hold voids as -32768 */
    @Test
    void everySquareAndEveryVoidAgrees() throws IOException {
        for (String name : new String[] {"N49E011", "N50E011"}) {
            ShortBuffer raw = raw(name);
            Terrain terrain = TerrainFile.read(DATA.resolve("dem/" + name + ".hgt.zip"));
            int south = Integer.parseInt(name.substring(1, 3));
            int voids = 0;
            for (int square = 0; square < SIDE * SIDE; square += isVoid(raw, square) ? 1 : 7) {
                int row = square / SIDE;
                int column = square % SIDE;
                if (row == SIDE - 1 || column == SIDE - 1) {
                    continue;
                }
                var middle = new Position(south + 1 - (row + 0.5) / (SIDE - 1), 11 + (column + 0.5) / (SIDE - 1));
                var found = terrain.findHeight(middle);
                boolean none = isVoid(raw, square);
                voids += none ? 1 : 0;
                double mean_m = mean_m(raw, square);
                assertThat(found.isEmpty()).as(name + " " + square).isEqualTo(none);
                found.ifPresent(height -> assertThat(height.metres()).isCloseTo(mean_m, within(SUMMED_m)));
            }
            System.out.println(name + ": squares without a height met: " + voids);
        }
    }

    /** The voids of a tile, each of them asked at its own place. */
    @Test
    void noHeightAtAVoidHolds() throws IOException {
        ShortBuffer raw = raw("N49E011");
        Terrain terrain = TerrainFile.read(DATA.resolve("dem/N49E011.hgt.zip"));
        int voids = 0;
        for (int i = 0; i < SIDE * SIDE; i++) {
            if (raw.get(i) == HeightTile.VOID) {
                voids++;
                int row = i / SIDE;
                int column = i % SIDE;
                var there = new Position(50 - row / (SIDE - 1.0), 11 + column / (SIDE - 1.0));
                assertThat(terrain.findHeight(there)).as("void " + i).isEmpty();
            }
        }
        assertThat(voids).isEqualTo(20);
    }

    private static boolean isVoid(ShortBuffer raw, int square) {
        for (int corner : corners(square)) {
            if (corner < raw.limit() && raw.get(corner) == HeightTile.VOID) {
                return true;
            }
        }
        return false;
    }

    private static double mean_m(ShortBuffer raw, int square) {
        double sum_m = 0;
        for (int corner : corners(square)) {
            sum_m += raw.get(corner) / 4.0;
        }
        return sum_m;
    }

    private static int[] corners(int square) {
        return new int[] {square, square + 1, square + SIDE, square + SIDE + 1};
    }

    private static ShortBuffer raw(String name) throws IOException {
        try (var zip = new ZipFile(DATA.resolve("dem/" + name + ".hgt.zip").toFile())) {
            byte[] bytes = zip.getInputStream(zip.entries().nextElement()).readAllBytes();
            return ByteBuffer.wrap(bytes).asShortBuffer();
        }
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
