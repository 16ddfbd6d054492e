package org.hosewright.files.yaml;

/** Where a value of a file stands.
 *
 * @param source name of the file
 * @param line line number, from 1
 * @param path keys from the top, joined by points; empty for the whole file
 */
public record Place(String source, int line, String path) {
    /** The place of an entry within this one. */
    Place under(String key, int itsLine) {
        return new Place(source, itsLine, path.isEmpty() ? key : path + "." + key);
    }

    /** As it stands in an error message. */
    public String text() {
        return source + ", line " + line + (path.isEmpty() ? "" : ", " + path);
    }
}
