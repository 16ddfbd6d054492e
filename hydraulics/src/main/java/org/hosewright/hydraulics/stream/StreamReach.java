package org.hosewright.hydraulics.stream;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** How far a smooth bore stream carries.
 *
 * @source Fire Engineering, August 1960, from "Fire Service Hydraulics" p. 171: S = p/2 + 26 for a 3/4 in tip, 5 ft
 *     more for each 1/8 in above it; the vertical form 5/8 p + 26 from memory (Casey)
 * @validFor tips of 3/4 to 1 1/4 in above 30 psi and to 100 psi, still air; the range of a good stream is shorter
 */
public final class StreamReach {
    private static final double LEAST_PSI = 30;
    private static final double MOST_PSI = 100;
    private static final double LEAST_TIP_IN = 0.75;
    private static final double MOST_TIP_IN = 1.25;
    private static final double BASE_FT = 26;
    private static final double STEP_FT = 5;
    private static final double STEP_IN = 0.125;

    private StreamReach() {}

    /** How far it carries across. */
    public static Length across(Length bore, Pressure tip) {
        return reach(bore, tip, 0.5);
    }

    /** How high it carries. */
    public static Length up(Length bore, Pressure tip) {
        return reach(bore, tip, 0.625);
    }

    private static Length reach(Length bore, Pressure tip, double times) {
        double psi = Numbers.requireWithin("tip pressure", tip.psi(), LEAST_PSI, MOST_PSI, "psi");
        double inches = Numbers.requireWithin("bore", bore.inches(), LEAST_TIP_IN, MOST_TIP_IN, "in");
        return Length.ofFeet(times * psi + BASE_FT + STEP_FT * (inches - LEAST_TIP_IN) / STEP_IN);
    }
}
