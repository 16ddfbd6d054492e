package org.hosewright.hydraulics.demand;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** Needed fire flow of a one or two family dwelling by the gap to the next building.
 *
 * @source ISO, guide to needed fire flow, table by spacing
 * @validFor dwellings of one or two families
 */
public final class DwellingFlow {
    private DwellingFlow() {}

    /** The flow for a gap; a gap between the table's whole feet counts as the smaller. */
    public static Flow of(Length gap) {
        double feet = Numbers.requireNotNegative("gap to the next building", gap.feet());
        if (!Numbers.isAtLeast(100, feet)) {
            return Flow.ofGpm(500);
        }
        if (Numbers.isAtLeast(feet, 31)) {
            return Flow.ofGpm(750);
        }
        return Flow.ofGpm(Numbers.isAtLeast(feet, 11) ? 1000 : 1500);
    }
}
