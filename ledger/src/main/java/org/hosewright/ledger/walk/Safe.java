package org.hosewright.ledger.walk;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.Kit;

/** How far along a way every mark holds.
 *
 * @param length of hose, less the reserve in whole sections; never below 0
 * @param stop the limit at the first mark that does not hold, where it has one
 */
record Safe(Length length, Optional<Limit> stop) {

    static Safe of(List<SectionThere> sections, Kit kit, Length section) {
        double safe_m = 0;
        Optional<Limit> stop = Optional.empty();
        for (SectionThere there : sections) {
            if (there.line().isPresent() && !there.line().get().isSafe()) {
                stop = there.line().get().first();
                break;
            }
            safe_m = there.line().isPresent() ? there.mark().hose().metres() : safe_m;
        }
        return new Safe(kit.lessReserve(new Length(safe_m), section), stop);
    }
}
