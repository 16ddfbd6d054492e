package org.hosewright.ledger.order;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.order.OrderedCheck;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.card.CardEntry;

/** The figure that people set for one length of one package, and what it gives.
 *
 * @param length hose length, whole sections
 * @param figure what the named gauge must show
 * @param flow what the tip then delivers, at the best estimate
 * @param tip tip pressure
 * @param reaction nozzle reaction
 * @param tested true where a night flew it at least that far
 * @param refusal why the figure must not be ordered, as sentences; empty where it stands
 * @param nearest what would do instead of a refused figure
 */
public record OrderedPressure(
        Length length,
        Pressure figure,
        Flow flow,
        Pressure tip,
        Force reaction,
        boolean tested,
        List<String> refusal,
        Optional<Pressure> nearest) {
    public OrderedPressure {
        refusal = List.copyOf(refusal);
    }

    static OrderedPressure of(CardEntry entry) {
        OrderedCheck check = entry.check();
        return new OrderedPressure(
                entry.length(),
                entry.gauge(),
                check.state().flow(),
                check.state().tip(),
                check.state().reaction(),
                entry.tested(),
                entry.refusal(),
                entry.stands() ? Optional.empty() : entry.nearest());
    }

    /** True where the figure may be ordered. */
    public boolean stands() {
        return refusal.isEmpty();
    }
}
