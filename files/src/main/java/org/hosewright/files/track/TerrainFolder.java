package org.hosewright.files.track;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.ground.track.Position;

/** A folder with terrain files, each found by the corner in its name. */
public final class TerrainFolder {
    private static final List<String> ENDINGS = List.of(".hgt", ".hgt.zip", ".SRTMGL1.hgt.zip", ".zip");

    private final Path folder;

    /** A folder; it need not be there. */
    public TerrainFolder(Path folder) {
        this.folder = folder;
    }

    /** The name of the tile that a place lies in, as in N44W073. */
    public static String tile(Position place) {
        int south = (int) Math.floor(place.latitude_deg());
        int west = (int) Math.floor(place.longitude_deg());
        return String.format(
                Locale.ROOT,
                "%s%02d%s%03d",
                south < 0 ? "S" : "N",
                Math.abs(south),
                west < 0 ? "W" : "E",
                Math.abs(west));
    }

    /** The heights of a tile, where the folder has its file.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput the file is broken
     */
    public Optional<Terrain> find(String tile) {
        return ENDINGS.stream()
                .map(ending -> folder.resolve(tile + ending))
                .filter(Files::isRegularFile)
                .findFirst()
                .map(TerrainFile::read);
    }
}
