package org.hosewright.files.readings;

/** A readings file, RFC 4180, in and out. */
public final class ReadingsFile {
    private ReadingsFile() {}

    /** The cells of a readings file.
     *
     * @param csv the text
     * @param source the file's name, for error messages
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a readings table
     */
    public static ReadingsTable read(String csv, String source) {
        throw new UnsupportedOperationException();
    }

    /** The text of a table, which reads back as the same table. */
    public static String write(ReadingsTable table) {
        throw new UnsupportedOperationException();
    }
}
