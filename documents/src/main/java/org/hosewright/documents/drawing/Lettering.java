package org.hosewright.documents.drawing;

/** How words are drawn.
 *
 * @param size height of the type, in the drawing's own units
 * @param colour as a style sheet names it
 * @param bold whether in the heavier weight
 */
record Lettering(double size, String colour, boolean bold) {}
