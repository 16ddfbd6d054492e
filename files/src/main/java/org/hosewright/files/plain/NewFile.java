package org.hosewright.files.plain;

import java.nio.file.Path;

/** A file put away whole: written aside, then renamed, so that no half of it is ever seen. */
public final class NewFile {
    private NewFile() {}

    /** Writes a file.
     *
     * @param force whether a file that is already there may be replaced
     * @throws org.hosewright.hydraulics.error.InvalidInput the file is there and force was not given
     */
    public static void write(Path file, byte[] content, boolean force) {
        throw new UnsupportedOperationException();
    }
}
