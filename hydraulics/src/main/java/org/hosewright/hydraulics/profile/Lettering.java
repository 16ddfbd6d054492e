package org.hosewright.hydraulics.profile;

/** How wide a text is set, so that names can be kept apart.
 *
 * @source advance widths of DejaVu Sans Condensed and its bold, the family of pages and papers; another family that is
 *     up to 8 % wider still keeps apart
 */
final class Lettering {
    /** Room for another family; an answer has it in the gap to its unit. */
    private static final double SPARE = 1.08;

    private static final int FIRST = 32;

    /** Of characters that are not in the tables [em/1000]: the widest of the signs. */
    private static final int OTHER = 900;

    /** From the space to the tilde [em/1000]. */
    private static final int[] REGULAR = {
        286, 360, 414, 754, 572, 855, 702, 247, 351, 351, 450, 754, 286, 325, 286, 303, 572, 572, 572, 572, 572, 572,
        572, 572, 572, 572, 303, 303, 754, 754, 754, 478, 900, 615, 617, 628, 693, 568, 518, 697, 677, 265, 265, 590,
        501, 776, 673, 708, 542, 708, 625, 571, 549, 659, 615, 890, 616, 549, 616, 351, 303, 351, 754, 450, 450, 551,
        571, 495, 571, 554, 316, 571, 570, 250, 250, 521, 250, 876, 570, 550, 571, 571, 370, 469, 353, 570, 532, 736,
        532, 532, 472, 572, 303, 572, 754
    };

    private static final int[] BOLD = {
        313, 410, 469, 754, 626, 901, 785, 275, 411, 411, 470, 754, 342, 374, 342, 329, 626, 626, 626, 626, 626, 626,
        626, 626, 626, 626, 360, 360, 754, 754, 754, 522, 900, 696, 686, 660, 747, 615, 615, 738, 753, 334, 334, 697,
        573, 896, 753, 765, 659, 765, 693, 648, 614, 730, 696, 993, 694, 651, 652, 411, 329, 411, 754, 450, 450, 607,
        644, 533, 644, 610, 391, 644, 641, 308, 308, 598, 308, 938, 641, 618, 644, 644, 444, 536, 430, 641, 586, 831,
        580, 586, 523, 641, 329, 641, 754
    };

    /** Above the baseline [em]: capitals and figures with air. */
    static final double ASCENT = 0.82;

    /** Below the baseline [em]. */
    static final double DESCENT = 0.26;

    private Lettering() {}

    /** Width of a text. */
    static double width(Role role, String text, double size) {
        int[] table = role == Role.ANSWER || role == Role.PIN_ASIDE ? BOLD : REGULAR;
        int sum = 0;
        for (int i = 0; i < text.length(); i++) {
            int index = text.charAt(i) - FIRST;
            sum += index >= 0 && index < table.length ? table[index] : OTHER;
        }
        return sum / 1000.0 * size * (role == Role.ANSWER ? 1 : SPARE);
    }

    /** What a text takes up. */
    static Box box(Mark.Text text) {
        double width = width(text.role(), text.text(), text.size());
        double shift = text.anchor() == Anchor.START ? 0 : text.anchor() == Anchor.MIDDLE ? width / 2 : width;
        return new Box(text.x() - shift, text.y() - ASCENT * text.size(), width, (ASCENT + DESCENT) * text.size());
    }
}
