package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** Losses counted on the fingers of one hand, per 100 ft.
 *
 * @source IFSTA, Driver/Operator Handbook (from memory); of the 1 3/4 in hand one finger was seen on study cards
 */
public enum HandMethod implements LossMethod {
    /** Fingers are 100 to 500 gpm, gaps between them the fifties: n times 2n, n in hundreds. @validFor 2 1/2 in hose */
    TWO_AND_HALF_INCH(100, 500, 50),

    /** Fingers are 100, 125, 150, 175 and 200 gpm, numbered 1 to 5: twelve times the number. @validFor 1 3/4 in hose */
    ONE_AND_THREE_QUARTER_INCH(100, 200, 25);

    /** How near a flow has to be to a finger [gpm]. */
    private static final double ON_FINGER = 1e-6;

    private final double least_gpm;
    private final double most_gpm;
    private final double step_gpm;

    HandMethod(double least_gpm, double most_gpm, double step_gpm) {
        this.least_gpm = least_gpm;
        this.most_gpm = most_gpm;
        this.step_gpm = step_gpm;
    }

    /** The finger or gap that is nearest to a flow.
     *
     * @throws InvalidInput it leaves the hand's range
     */
    public Flow nearest(Flow flow) {
        double gpm = LossMethod.gpm(flow, least_gpm, most_gpm);
        return Flow.ofGpm(least_gpm + step_gpm * Numbers.toNearest((gpm - least_gpm) / step_gpm, 1));
    }

    @Override
    public Pressure loss(Flow flow, Length length) {
        double gpm = LossMethod.gpm(flow, least_gpm, most_gpm);
        double finger = Numbers.toNearest((gpm - least_gpm) / step_gpm, 1);
        if (Math.abs(least_gpm + finger * step_gpm - gpm) > ON_FINGER) {
            String would = "a multiple of " + Numbers.plain(step_gpm) + " gpm, a finger or a gap";
            throw new InvalidInput("flow", Numbers.plain(Numbers.toNearest(gpm, 0.1)) + " gpm", would, "");
        }
        double n = gpm / 100;
        double per100 = this == TWO_AND_HALF_INCH ? n * 2 * n : 12 * (finger + 1);
        return Pressure.ofPsi(per100 * length.feet() / 100);
    }
}
