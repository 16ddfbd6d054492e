package org.hosewright.hydraulics.profile;

import org.hosewright.hydraulics.quantity.Length;

/** Where the parts of a drawing stand on its sheet.
 *
 * @param plot the pressures
 * @param groundTop top of the strip for ground and couplings
 * @param groundBottom bottom of it
 * @param stacked true where the answers stand above the plot for want of width
 */
record Layout(Plot plot, double groundTop, double groundBottom, boolean stacked) {
    /** Room between parts [em]. */
    static final double GAP_em = 0.7;

    /** The strip for ground and couplings [em]. */
    private static final double GROUND_em = 3.6;

    /** The line of round numbers below everything [em]. */
    private static final double FOOT_em = 1.5;

    /** A hatched strip above the highest limit [em]. */
    static final double HATCH_em = 1.7;

    /** The plot is to have at least this share of the width, else the answers go above it. */
    private static final double PLOT_SHARE = 0.55;

    /** Room for half of the last round number on the length axis, or a dot [em]. */
    private static final double EDGE_em = 0.5;

    static Layout of(Sheet sheet, Span span, Length length, double axisWidth, AnswerBlock pump, AnswerBlock tip) {
        double em = sheet.type();
        double columns = pump.width() + axisWidth + tip.width() + 3 * GAP_em * em;
        boolean stacked = sheet.width() - columns < PLOT_SHARE * sheet.width();
        double left = axisWidth + GAP_em * em + (stacked || pump.width() == 0 ? 0 : pump.width() + GAP_em * em);
        double right = sheet.width() - (stacked || tip.width() == 0 ? EDGE_em * em : tip.width() + GAP_em * em);
        double head = stacked ? Math.max(pump.height(), tip.height()) + GAP_em * em : 0;
        double top = head + Lettering.ASCENT * em;
        double groundBottom = sheet.height() - FOOT_em * em;
        double groundTop = groundBottom - GROUND_em * em;
        double bottom = groundTop - GAP_em * em;
        double share = Math.min(0.5, HATCH_em * em / (bottom - top));
        Plot plot = new Plot(left, right, top, bottom, length, span.low(), span.high(share));
        return new Layout(plot, groundTop, groundBottom, stacked);
    }
}
