package org.hosewright.ledger.kit;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The flows that a loss was flown at.
 *
 * @param least the lowest
 * @param most the highest; not below it
 */
public record FlownRange(Flow least, Flow most) {
    /** A flow beyond by no more than this share still counts as flown [1]: a flow meter is off by as much. */
    private static final double READ = 0.05;

    public FlownRange {
        Numbers.requireNotNegative("lowest flow flown", least.cubicMetresPerSecond());
        if (most.cubicMetresPerSecond() < least.cubicMetresPerSecond()) {
            String given = Numbers.plain(most.gpm()) + " gpm";
            throw new InvalidInput("highest flow flown", given, "not below the lowest", "");
        }
    }

    /** The range of both. */
    public FlownRange with(FlownRange other) {
        return new FlownRange(
                least.cubicMetresPerSecond() <= other.least.cubicMetresPerSecond() ? least : other.least,
                most.cubicMetresPerSecond() >= other.most.cubicMetresPerSecond() ? most : other.most);
    }

    /** The same, out to whole units of a company: finer is not read. */
    public FlownRange outToWhole(UnitSystem units) {
        Unit unit = units.flow();
        return new FlownRange(
                Flow.of(Math.floor(unit.ofSi(least.cubicMetresPerSecond())), unit),
                Flow.of(Math.ceil(unit.ofSi(most.cubicMetresPerSecond())), unit));
    }

    /** Whether a flow lies outside by more than a meter tells. */
    public boolean leaves(Flow flow) {
        double q = flow.cubicMetresPerSecond();
        return q < least.cubicMetresPerSecond() * (1 - READ) || q > most.cubicMetresPerSecond() * (1 + READ);
    }
}
