package org.hosewright.ledger.card;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.order.OrderedCheck;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** One box of a card: a length, and the pump pressure that stands there or the reason why none does.
 *
 * @param length hose length, whole sections
 * @param sections how many sections that is
 * @param gauge the rounded pressure as the named gauge must show it
 * @param tested true where a night flew this package's hose at least that far; else the box is marked untested
 * @param check the checks of the pump pressure behind it, two-sided
 * @param nearest the round figure nearest to what is needed that passes, as the named gauge must show it; empty where
 *     none would do
 * @param refusal why the figure must not be printed and what would do; empty where it stands
 */
public record CardEntry(
        Length length,
        int sections,
        Pressure gauge,
        boolean tested,
        OrderedCheck check,
        Optional<Pressure> nearest,
        List<String> refusal) {
    public CardEntry {
        refusal = List.copyOf(refusal);
    }

    /** True where the figure may be printed. */
    public boolean stands() {
        return refusal.isEmpty();
    }
}
