package org.hosewright.hydraulics.demand;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Ratio;

/** Flow for a building on fire, by rules made for the first minutes. */
public final class FireFlow {
    /** The most that the rule is used for. @source National Fire Academy (from memory) */
    private static final double MOST_GPM = 1000;

    /** The share of the building that the rule is meant for. @source National Fire Academy, quoted by FireFighterNation */
    private static final double MOST_SHARE = 0.5;

    private FireFlow() {}

    /** The National Fire Academy's rule: length times width in feet by three, times floors, times the share burning.
     *
     * @param floors burning floors; 1 or more
     * @param share of the building that burns; to one half
     * @param exposures each adds a quarter
     * @source FireFighterNation: 30 by 50 ft, a quarter burning, 125 gpm
     * @validFor attack from inside, up to half of the building and 1000 gpm
     */
    public static Flow nationalFireAcademy(Length length, Length width, int floors, Ratio share, int exposures) {
        Numbers.requirePositive("burning floors", floors);
        Numbers.requireNotNegative("exposures", exposures);
        Numbers.requireWithin("share burning", share.value(), 0, MOST_SHARE, "");
        double whole = length.feet() * width.feet() / 3 * floors;
        double gpm = whole * share.value() * (1 + 0.25 * exposures);
        return Flow.ofGpm(Numbers.requireWithin("fire flow by this rule", gpm, 0, MOST_GPM, "gpm"));
    }

    /** The Iowa rule: the largest space in cubic feet by one hundred.
     *
     * @source Royer and Nelson, Iowa State University, 1959 (authors and year from memory), as the trade quotes it
     * @validFor 30 seconds of fog into one closed space
     */
    public static Flow iowa(Length length, Length width, Length height) {
        return Flow.ofGpm(length.feet() * width.feet() * height.feet() / 100);
    }
}
