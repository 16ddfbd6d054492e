package org.hosewright.hydraulics.profile;

import java.util.List;
import org.hosewright.hydraulics.quantity.Length;

/** Where the parts of a drawing stand on its sheet.
 *
 * @param plot the pressures
 * @param groundTop top of the strip for ground and couplings
 * @param groundBottom bottom of it
 * @param stacked true where the answers stand above the plot for want of width
 * @param pump the answer at the pump, as it is set
 * @param tip the answer at the tip, as it is set
 */
record Layout(Plot plot, double groundTop, double groundBottom, boolean stacked, AnswerBlock pump, AnswerBlock tip) {
    /** Room between parts [em]. */
    static final double GAP_em = 0.7;

    /** The strip for a ground that may rise, and for one that is level [em]. */
    static final double HILLS_em = 3.6;

    static final double FLAT_em = 1.8;

    /** The line of round numbers below everything [em]. */
    private static final double FOOT_em = 1.5;

    /** A hatched strip above the highest limit [em]. */
    static final double HATCH_em = 1.7;

    /** The plot is to have at least this share of the width, else the answers go above it. */
    static final double PLOT_SHARE = 0.55;

    /** Room for half of the last round number on the length axis, or a dot [em]. */
    private static final double EDGE_em = 0.5;

    /** A profile: answers at both ends, or above the plot where they leave it too little width. */
    static Layout of(Sheet sheet, Span span, Length length, double axisWidth, List<AnswerBlock> ends) {
        double em = sheet.type();
        AnswerBlock pump = ends.get(0);
        AnswerBlock tip = ends.get(1);
        double columns = pump.width() + axisWidth + tip.width() + 3 * GAP_em * em;
        boolean stacked = sheet.width() - columns < PLOT_SHARE * sheet.width();
        if (!stacked) {
            double left = axisWidth + GAP_em * em + column(pump, em);
            double right = sheet.width() - Math.max(EDGE_em * em, column(tip, em));
            Plot plot = plot(sheet, span, length, new Box(left, 0, right - left, HILLS_em * em));
            return new Layout(plot, plot.bottom() + GAP_em * em, foot(sheet), false, pump, tip);
        }
        boolean oneLine = pump.inOneLine().width() + tip.inOneLine().width() + GAP_em * em <= sheet.width();
        AnswerBlock first = oneLine ? pump.inOneLine() : pump;
        AnswerBlock last = oneLine ? tip.inOneLine() : tip;
        double head = Math.max(first.height(), last.height()) + GAP_em * em;
        double left = axisWidth + GAP_em * em;
        double width = sheet.width() - EDGE_em * em - left;
        Plot plot = plot(sheet, span, length, new Box(left, head, width, HILLS_em * em));
        return new Layout(plot, plot.bottom() + GAP_em * em, foot(sheet), true, first, last);
    }

    /** A plot on a sheet.
     *
     * @param room left edge and width of the plot, the head above it as its top, the ground's strip as its height
     */
    static Plot plot(Sheet sheet, Span span, Length length, Box room) {
        double em = sheet.type();
        double top = room.top() + Lettering.ASCENT * em;
        double bottom = foot(sheet) - room.height() - GAP_em * em;
        double share = Math.min(0.5, HATCH_em * em / (bottom - top));
        return new Plot(room.left(), room.right(), top, bottom, length, span.low(), span.high(share));
    }

    /** Below the ground, above the round numbers. */
    static double foot(Sheet sheet) {
        return sheet.height() - FOOT_em * sheet.type();
    }

    private static double column(AnswerBlock block, double em) {
        return block.width() == 0 ? 0 : block.width() + GAP_em * em;
    }
}
