package org.hosewright.ledger.kit;

import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;

/** What a hose or a nozzle is coupled by: its nominal size, and the kind of thread or lug as the trade names it.
 *
 * @param size nominal size
 * @param kind letters, digits, spaces, points and hyphens, a letter first, at most 40; "NH", "instantaneous"
 */
public record Coupling(Length size, String kind) {
    private static final Pattern KIND = Pattern.compile("[A-Za-z][A-Za-z0-9 .-]{0,39}");

    public Coupling {
        if (!KIND.matcher(kind).matches()) {
            throw new InvalidInput("kind of coupling", kind, "a name as in 'NH' or 'instantaneous'", "");
        }
    }

    /** True where the two go together without an adapter, as far as their names say. */
    public boolean fits(Coupling other) {
        return kind.equalsIgnoreCase(other.kind) && Math.abs(size.millimetres() - other.size.millimetres()) < NEAR_mm;
    }

    /** Nominal sizes nearer than this are one size: 2 1/2 in is 63.5 mm and is also called 64 mm [mm]. */
    private static final double NEAR_mm = 1;
}
