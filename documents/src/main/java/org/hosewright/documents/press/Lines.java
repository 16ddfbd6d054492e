package org.hosewright.documents.press;

/** How much room words take, before they are set. */
public final class Lines {
    /** Words break at spaces, so that a line is never quite full. */
    private static final double FULL = 0.93;

    private static final double PT_PER_MM = 72 / 25.4;

    private Lines() {}

    /** Lines that a paragraph takes.
     *
     * @param size of the type [pt]
     * @param width_mm of the column [mm]
     */
    public static int of(String words, double size, double width_mm) {
        double width_pt = Typeface.REGULAR.width(Typesetting.set(words), size);
        return (int) Math.max(1, Math.ceil(width_pt / (FULL * width_mm * PT_PER_MM)));
    }

    /** Height of a paragraph [mm].
     *
     * @param size of the type [pt]
     * @param width_mm of the column [mm]
     * @param leading from line to line, in sizes of the type
     */
    public static double height_mm(String words, double size, double width_mm, double leading) {
        return of(words, size, width_mm) * size * leading / PT_PER_MM;
    }
}
