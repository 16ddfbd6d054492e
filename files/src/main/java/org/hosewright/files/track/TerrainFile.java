package org.hosewright.files.track;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.hosewright.ground.terrain.HeightTile;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.hydraulics.error.InvalidInput;

/** A terrain file in SRTM's form: the tile's south-west corner in its name, big-endian heights; also zipped.
 *
 * @source NASA, SRTM Topography, documentation of version 2.1
 */
public final class TerrainFile {
    private static final Pattern NAME = Pattern.compile("([NS])(\\d{2})([EW])(\\d{3})\\.hgt", Pattern.CASE_INSENSITIVE);

    /** Heights along an edge: one or three seconds of arc apart. */
    private static final Set<Integer> SIDES = Set.of(1201, 3601);

    private static final int MOST_ENTRIES = 16;

    private static final int LIMIT = 2 * 3601 * 3601;

    private TerrainFile() {}

    /** The heights of a file.
     *
     * @throws InvalidInput missing, named or sized otherwise, or a broken archive
     */
    public static Terrain read(Path file) {
        String name = String.valueOf(file.getFileName());
        byte[] content = Bounded.read(file, LIMIT);
        return name.toLowerCase(Locale.ROOT).endsWith(".zip") ? zipped(content, name) : tile(content, name);
    }

    private static Terrain zipped(byte[] content, String source) {
        try (ZipInputStream archive = new ZipInputStream(new ByteArrayInputStream(content))) {
            ZipEntry entry = archive.getNextEntry();
            for (int count = 0; entry != null && count < MOST_ENTRIES; count++) {
                String name = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
                byte[] inside = Bounded.read(archive, LIMIT, source + ", " + name);
                if (NAME.matcher(name).matches()) {
                    return tile(inside, name);
                }
                entry = archive.getNextEntry();
            }
        } catch (IOException | RuntimeException broken) {
            if (broken instanceof InvalidInput refused) {
                throw refused;
            }
            throw new InvalidInput("archive", "broken", "a whole zip file with one terrain file", source);
        }
        throw new InvalidInput("archive", "no terrain file in it", "a zip file with a file like N44W073.hgt", source);
    }

    private static Terrain tile(byte[] content, String name) {
        Matcher corner = NAME.matcher(name);
        if (!corner.matches()) {
            throw new InvalidInput("name of a terrain file", name, "its south-west corner, as N44W073.hgt", "");
        }
        int side = (int) Math.round(Math.sqrt(content.length / 2.0));
        if (!SIDES.contains(side) || content.length != 2 * side * side) {
            String given = content.length + " bytes";
            throw new InvalidInput("size", given, "1201 by 1201 or 3601 by 3601 heights of two bytes", name);
        }
        int south = Integer.parseInt(corner.group(2)) * (corner.group(1).equalsIgnoreCase("S") ? -1 : 1);
        int west = Integer.parseInt(corner.group(4)) * (corner.group(3).equalsIgnoreCase("W") ? -1 : 1);
        return new HeightTile(
                name,
                south,
                west,
                side,
                ByteBuffer.wrap(content).order(ByteOrder.BIG_ENDIAN).asShortBuffer());
    }
}
