package org.hosewright.files.lay;

/** A lay file, read. */
public final class LayFile {
    private LayFile() {}
}
