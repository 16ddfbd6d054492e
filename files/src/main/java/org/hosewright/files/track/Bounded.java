package org.hosewright.files.track;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hosewright.hydraulics.error.InvalidInput;

/** Bytes of a file from outside, never more than a bound. */
final class Bounded {
    /** A day's walk with everything a recorder adds [bytes]. */
    static final int TRACK_LIMIT = 10_000_000;

    private Bounded() {}

    /** The bytes of a file.
     *
     * @throws InvalidInput missing, unreadable, or larger than the bound
     */
    static byte[] read(Path file, int limit_bytes) {
        if (!Files.isRegularFile(file)) {
            throw new InvalidInput("file", file.toString(), "a file that is there", "");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            return read(stream, limit_bytes, String.valueOf(file.getFileName()));
        } catch (IOException broken) {
            throw new InvalidInput(
                    "file", file.toString(), "a file that may be read (" + broken.getMessage() + ")", "");
        }
    }

    /** The bytes of a stream; at most one beyond the limit is read. */
    static byte[] read(InputStream stream, int limit_bytes, String source) throws IOException {
        byte[] bytes = stream.readNBytes(limit_bytes + 1);
        if (bytes.length > limit_bytes) {
            String allowed = "a file of at most " + limit_bytes / 1_000_000 + " MB";
            throw new InvalidInput("size", "more than " + limit_bytes + " bytes", allowed, source);
        }
        return bytes;
    }
}
