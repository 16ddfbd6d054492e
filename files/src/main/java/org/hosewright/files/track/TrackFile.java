package org.hosewright.files.track;

import java.nio.file.Path;
import java.util.Locale;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.walk.WalkReport;

/** A walk in a file: GPX 1.1, or GeoJSON as RFC 7946 has it. */
public final class TrackFile {
    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private TrackFile() {}

    /** The two forms. */
    public enum Form {
        GPX("application/gpx+xml"),
        GEOJSON("application/geo+json");

        private final String mediaType;

        Form(String mediaType) {
            this.mediaType = mediaType;
        }

        public String mediaType() {
            return mediaType;
        }

        /** The form that a file's name ends in.
         *
         * @throws InvalidInput another ending
         */
        public static Form of(String name) {
            String lower = name.toLowerCase(Locale.ROOT);
            if (lower.endsWith(".gpx")) {
                return GPX;
            }
            if (lower.endsWith(".geojson") || lower.endsWith(".json")) {
                return GEOJSON;
            }
            throw new InvalidInput("name of a track file", name, "a name that ends in .gpx or .geojson", "");
        }
    }

    /** The walk in a file.
     *
     * @throws InvalidInput missing, broken, hostile or too large, with the place
     */
    public static Track read(Path file) {
        String name = String.valueOf(file.getFileName());
        return read(Bounded.read(file, Bounded.TRACK_LIMIT), name);
    }

    /** The walk in bytes that are already here; what they are is told by how they begin.
     *
     * @param source name of what is read, for error messages
     * @throws InvalidInput as above
     */
    public static Track read(byte[] content, String source) {
        if (content.length > Bounded.TRACK_LIMIT) {
            String allowed = "a file of at most " + Bounded.TRACK_LIMIT / 1_000_000 + " MB";
            throw new InvalidInput("size", content.length + " bytes", allowed, source);
        }
        int at = 0;
        while (at < content.length && (isBlank(content[at]) || isMark(content, at))) {
            at++;
        }
        if (at < content.length && content[at] == '<') {
            return GpxReader.read(content, source);
        }
        if (at < content.length && content[at] == '{') {
            return GeoJsonReader.read(content, source);
        }
        throw new InvalidInput("track file", at == content.length ? "" : "neither", "GPX 1.1 or GeoJSON", source);
    }

    private static boolean isBlank(byte character) {
        return character >= 0 && character <= ' ';
    }

    private static boolean isMark(byte[] content, int at) {
        return at < BYTE_ORDER_MARK.length && content[at] == BYTE_ORDER_MARK[at];
    }

    /** A walk with its marks as a file's bytes. */
    public static byte[] write(WalkReport report, Form form) {
        return form == Form.GPX ? GpxWriter.write(report) : GeoJsonWriter.write(report);
    }
}
