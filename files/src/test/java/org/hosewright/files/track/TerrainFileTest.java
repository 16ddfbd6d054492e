package org.hosewright.files.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.hosewright.ground.terrain.HeightTile;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.ground.track.Position;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TerrainFileTest {
    private static final int SIDE = 1201;

    /** Heights are whole metres times shares of a square [m]. */
    private static final double ROUNDED_m = 1e-6;

    @TempDir
    Path folder;

    /** A plane: up 1 m every row to the north and 2 m every column to the east, a void in the south-west corner. */
    private static byte[] plane() {
        ByteBuffer heights = ByteBuffer.allocate(2 * SIDE * SIDE);
        for (int row = 0; row < SIDE; row++) {
            for (int column = 0; column < SIDE; column++) {
                boolean corner = row == SIDE - 1 && column == 0;
                heights.putShort(corner ? HeightTile.VOID : (short) (SIDE - 1 - row + 2 * column));
            }
        }
        return heights.array();
    }

    private Path file(String name, byte[] content) throws IOException {
        return Files.write(folder.resolve(name), content);
    }

    private Path zipped(String archive, String name, byte[] content) throws IOException {
        Path file = folder.resolve(archive);
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            out.putNextEntry(new ZipEntry(name));
            out.write(content);
            out.closeEntry();
        }
        return file;
    }

    @Test
    void straightBetweenFourHeightsHolds() throws IOException {
        Terrain bare = TerrainFile.read(file("N44W073.hgt", plane()));
        Terrain zipped = TerrainFile.read(zipped("N44W073.hgt.zip", "tiles/N44W073.hgt", plane()));
        for (Terrain terrain : new Terrain[] {bare, zipped}) {
            double height_m = terrain.findHeight(new Position(44 + 100.25 / 1200, -73 + 10.5 / 1200))
                    .orElseThrow()
                    .metres();
            assertThat(height_m).isCloseTo(100.25 + 21, within(ROUNDED_m));
            assertThat(terrain.source()).isEqualTo("terrain file N44W073.hgt");
            assertThat(terrain.findHeight(new Position(45, -72)).orElseThrow().metres())
                    .isCloseTo(3600, within(ROUNDED_m));
        }
    }

    @Test
    void voidsAndEdgesHold() throws IOException {
        Terrain terrain = TerrainFile.read(file("S01W073.hgt", plane()));
        assertThat(terrain.findHeight(new Position(-1 + 0.3 / 1200, -73 + 0.3 / 1200)))
                .isEmpty();
        assertThat(terrain.findHeight(new Position(-1 + 1.0 / 1200, -73 + 1.0 / 1200)))
                .isPresent();
        assertThat(terrain.findHeight(new Position(-1.0001, -72.5))).isEmpty();
        assertThat(terrain.findHeight(new Position(0.0001, -72.5))).isEmpty();
        assertThat(terrain.findHeight(new Position(-0.5, -71.9999))).isEmpty();
    }

    @Test
    void brokenTerrainFilesRefused() throws IOException {
        refused(file("heights.hgt", plane()), "N44W073.hgt");
        refused(file("N44W074.hgt", new byte[1000]), "1201 by 1201");
        refused(file("N44W075.hgt", new byte[30_000_000]), "MB");
        refused(file("N44W076.hgt.zip", new byte[] {'P', 'K', 3, 4, 0, 0}), "archive");
        refused(zipped("N44W077.zip", "readme.txt", new byte[10]), "no terrain file");
        refused(zipped("N44W078.zip", "big.bin", new byte[40_000_000]), "MB");
    }

    private static void refused(Path file, String says) {
        assertThatThrownBy(() -> TerrainFile.read(file))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining(says);
    }
}
