package org.hosewright.hydraulics.limit;

import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** A limit of a line and where the line stands against it.
 *
 * @param what what is limited, fit to follow "stopped by"
 * @param kind the kind of limit
 * @param at where the line stands
 * @param limit what it may not exceed; above 0, in the same kind of quantity
 * @param rule the rule that sets the limit, as a phrase in US units
 */
public record Limit(String what, LimitKind kind, Quantity at, Quantity limit, String rule) {
    /** How far beyond a limit still counts as on it [1]: the last digits of a unit conversion. */
    private static final double ON_IT = 1e-9;

    public Limit {
        Numbers.requirePositive(what, limit.si());
    }

    /** The share of the limit that is used; above 1 is beyond it. */
    public double used() {
        return at.si() / limit.si();
    }

    /** The rule as a phrase in a company's units. */
    public String rule(UnitSystem units) {
        return kind == LimitKind.PUMP ? RatedCurve.rule(units) : rule;
    }

    public boolean broken() {
        return used() > 1 + ON_IT;
    }
}
