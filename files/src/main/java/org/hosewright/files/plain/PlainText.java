package org.hosewright.files.plain;

import java.io.InputStream;
import java.nio.file.Path;

/** Text from outside, read within a bound: a large or binary file is refused before it fills the memory. */
public final class PlainText {
    /** The most a kit or lay file may hold [bytes]. */
    public static final int YAML_LIMIT = 1_000_000;

    /** The most a readings file may hold [bytes]: some ten thousand rows. */
    public static final int CSV_LIMIT = 2_000_000;

    private PlainText() {}

    /** The text of a file, UTF-8, without byte order mark.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput missing, too large, or not text
     */
    public static String read(Path file, int limit_bytes) {
        throw new UnsupportedOperationException();
    }

    /** The text of a stream, UTF-8, without byte order mark; at most one byte beyond the limit is read. */
    public static String read(InputStream stream, int limit_bytes, String source) {
        throw new UnsupportedOperationException();
    }
}
