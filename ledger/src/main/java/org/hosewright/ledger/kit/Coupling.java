package org.hosewright.ledger.kit;

import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** What a hose or a nozzle is coupled by: its nominal size, and the kind of thread or lug as the trade names it.
 *
 * @param size nominal size
 * @param kind letters, digits, spaces, points and hyphens, a letter first, at most 40; "NH", "instantaneous"
 */
public record Coupling(Length size, String kind) {
    private static final Pattern KIND = Pattern.compile("[A-Za-z][A-Za-z0-9 .-]{0,39}");

    /** Nominal sizes nearer than this are one size: 2 1/2 in is 63.5 mm and is also called 64 mm [mm]. */
    private static final double NEAR_mm = 1;

    /** How near to a sixteenth of an inch a size in inches is, rounding of the conversion alone [1/16 in]. */
    private static final double ROUND = 1e-6;

    public Coupling {
        if (!KIND.matcher(kind).matches()) {
            throw new InvalidInput("kind of coupling", kind, "a name as in 'NH' or 'instantaneous'", "");
        }
    }

    /** As people write it, the size in the unit that it is a round number of: "1 1/2 in NH", "64 mm instantaneous". */
    public String words() {
        double sixteenths = size.inches() * 16;
        boolean inInches = Math.abs(sixteenths - Math.rint(sixteenths)) < ROUND;
        return QuantityShown.of(inInches ? UnitSystem.US : UnitSystem.SI).size(size) + " " + kind;
    }

    /** True where the two go together without an adapter, as far as their names say. */
    public boolean fits(Coupling other) {
        return kind.equalsIgnoreCase(other.kind) && Math.abs(size.millimetres() - other.size.millimetres()) < NEAR_mm;
    }
}
