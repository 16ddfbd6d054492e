package org.hosewright.hydraulics.supply;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;

/** The classes of hydrants by their flow at 20 psi, with the colour of the cap.
 *
 * @source study cards on hydrant marking; NFPA 291 (from memory)
 */
public enum HydrantClass {
    AA(1500, "light blue"),
    A(1000, "green"),
    B(500, "orange"),
    C(0, "red");

    private final double least_gpm;
    private final String colour;

    HydrantClass(double least_gpm, String colour) {
        this.least_gpm = least_gpm;
        this.colour = colour;
    }

    /** The colour of its cap. */
    public String colour() {
        return colour;
    }

    /** The class of a hydrant that flows so much at 20 psi. */
    public static HydrantClass of(Flow at20psi) {
        double gpm = Numbers.requireNotNegative("flow of a hydrant", at20psi.gpm());
        for (HydrantClass each : values()) {
            if (Numbers.isAtLeast(gpm, each.least_gpm)) {
                return each;
            }
        }
        return C;
    }
}
