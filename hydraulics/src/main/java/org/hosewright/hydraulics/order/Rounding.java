package org.hosewright.hydraulics.order;

import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** How a pump pressure is rounded before it is ordered.
 *
 * @param units the units that it is ordered in
 * @param step the size of a step; above 0
 * @param way which multiple is taken
 */
public record Rounding(UnitSystem units, Pressure step, Way way) {
    /** Which multiple of the step is taken. */
    public enum Way {
        NEAREST,
        UP
    }

    /** A share of a step by which a pressure may lie above a multiple and still count as on it [1]. */
    private static final double ON_IT = 1e-6;

    public Rounding {
        Numbers.requirePositive("rounding step", step.pascals());
    }

    /** The trade's steps: 5 psi, or 50 kPa. */
    public static Rounding of(UnitSystem units, Way way) {
        return new Rounding(units, units == UnitSystem.US ? Pressure.ofPsi(5) : Pressure.ofKPa(50), way);
    }

    public Pressure round(Pressure pressure) {
        double steps = pressure.pascals() / step.pascals();
        return times(way == Way.UP ? Math.ceil(steps - ON_IT) : Numbers.toNearest(steps, 1));
    }

    Pressure times(double steps) {
        return new Pressure(steps * step.pascals());
    }
}
