package org.hosewright.hydraulics.profile;

import org.hosewright.hydraulics.quantity.Numbers;

/** The room that a drawing has.
 *
 * @param width of it; at least {@link #LEAST_WIDTH_em} times the type
 * @param height of it; at least {@link #LEAST_HEIGHT_em} times the type
 * @param type size of the small type, in the same unit
 */
public record Sheet(double width, double height, double type) {
    /** Narrower than this, answers and axis no longer fit side by side. */
    public static final double LEAST_WIDTH_em = 24;

    /** Lower than this, nothing is left for the pressures. */
    public static final double LEAST_HEIGHT_em = 18;

    /** A phone held upright [px]. */
    public static final Sheet PHONE = new Sheet(360, 320, 12);

    /** Half of a laptop's page [px]. */
    public static final Sheet LAPTOP = new Sheet(700, 330, 12);

    /** The width between the margins of a printed page [mm]. */
    public static final Sheet PAPER = new Sheet(180, 85, 2.9);

    public Sheet {
        Numbers.requirePositive("type size", type);
        Numbers.requireNotNegative("width of a drawing beyond the least", width - LEAST_WIDTH_em * type);
        Numbers.requireNotNegative("height of a drawing beyond the least", height - LEAST_HEIGHT_em * type);
    }
}
