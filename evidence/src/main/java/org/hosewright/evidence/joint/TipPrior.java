package org.hosewright.evidence.joint;

import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;

/** What is believed of a tip's flow beforehand.
 *
 * @param rate rated flow for the square root of pressure [m3/s per sqrt(Pa)]; 1 for an automatic tip, whose pressure tells none
 * @param centre flow factor
 * @param deviation of its logarithm
 */
public record TipPrior(double rate, double centre, double deviation) {
    /** The prior of a tip.
     *
     * @param gauged whether its bore was gauged for the night
     */
    public static TipPrior of(Tip tip, boolean gauged) {
        if (tip instanceof SmoothBore bore) {
            return new TipPrior(bore.k(), 1, gauged ? Priors.GAUGED_BORE : Priors.UNGAUGED_BORE);
        }
        if (tip instanceof Fog fog) {
            return new TipPrior(fog.k(), Priors.FOG_CENTRE, Priors.FOG);
        }
        return new TipPrior(1, 1, Priors.FOG);
    }

    /** True where the pressure at the tip says nothing about the flow. */
    public static boolean isBlind(Tip tip) {
        return tip instanceof Automatic;
    }
}
