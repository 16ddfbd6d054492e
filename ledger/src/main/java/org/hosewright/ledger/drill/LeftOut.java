package org.hosewright.ledger.drill;

import java.util.List;
import org.hosewright.evidence.calibration.Terms;

/** What a night would tell with one of the readings that it rests on left out.
 *
 * @param reading its id
 * @param terms the numbers that would still be determined
 * @param needed needed pump pressures by line and length, where they would still be known
 */
public record LeftOut(String reading, Terms terms, List<NeededRow> needed) {
    public LeftOut {
        needed = List.copyOf(needed);
    }
}
