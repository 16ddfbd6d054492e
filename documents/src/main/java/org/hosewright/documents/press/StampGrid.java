package org.hosewright.documents.press;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Where stamps stand: one on each piece that a sheet is cut or folded into, each piece of one size.
 *
 * @param left_mm from the sheet's left edge to the first piece [mm]
 * @param top_mm from the sheet's upper edge to the first piece [mm]
 * @param width_mm of a piece [mm]
 * @param height_mm of a piece [mm]
 * @param across pieces side by side
 * @param down pieces one above the other
 * @param total pieces on all pages together; each page bears one stamp at least
 */
public record StampGrid(
        double left_mm, double top_mm, double width_mm, double height_mm, int across, int down, int total) {
    /** One stamp over the whole page. */
    public static final StampGrid WHOLE_PAGE = new StampGrid(0, 0, 0, 0, 1, 1, Integer.MAX_VALUE);

    private static final double PT_PER_MM = 72 / 25.4;

    /** How many pieces a page has.
     *
     * @param page its number, from 0
     */
    int pieces(int page) {
        int most = across * down;
        return Math.max(1, Math.min(most, total - page * most));
    }

    /** The place of a piece on a page, in the page's own points. */
    PDRectangle piece(int number, PDRectangle page) {
        if (width_mm == 0) {
            return page;
        }
        double x = left_mm + width_mm * (number % across);
        double y = top_mm + height_mm * Math.floorDiv(number, across);
        return new PDRectangle(
                (float) (page.getLowerLeftX() + x * PT_PER_MM),
                (float) (page.getUpperRightY() - (y + height_mm) * PT_PER_MM),
                (float) (width_mm * PT_PER_MM),
                (float) (height_mm * PT_PER_MM));
    }
}
