package org.hosewright.documents.drawing;

/** How a line is drawn.
 *
 * @param colour as CSS writes it
 * @param width stroke width, in the drawing's unit
 * @param dash dash pattern as SVG writes it; empty for an unbroken line
 */
record Pen(String colour, double width, String dash) {
    static final String INK = "#1b1b1b";
    static final String PALE = "#77736a";
    static final String GROUND = "#dfd9c6";
    static final String BAND = "#dcdcd8";

    /** What is to be acted on, and nothing else. */
    static final String ACCENT = "#a8321a";

    static Pen ink(double width) {
        return new Pen(INK, width, "");
    }

    static Pen pale(double width) {
        return new Pen(PALE, width, "");
    }

    Pen dashed(String pattern) {
        return new Pen(colour, width, pattern);
    }
}
