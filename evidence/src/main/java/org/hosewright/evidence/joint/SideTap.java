package org.hosewright.evidence.joint;

import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** A tap in the wall of the waterway behind a tip: it reads the total pressure less the velocity head there. */
public final class SideTap {
    private SideTap() {}

    /** The share of the total pressure that such a gauge shows, 1 - (d/D)^4.
     *
     * @param bore the smooth bore in front
     * @param inside diameter at the tap
     * @throws InvalidInput the waterway is no wider than the bore
     * @source Bernoulli's equation between the tap and the free stream
     */
    public static double share(SmoothBore bore, Length inside) {
        double ratio = bore.bore().metres() / inside.metres();
        if (!(ratio < 1)) {
            String given = Numbers.plain(inside.inches()) + " in";
            throw new InvalidInput("inside diameter at the side tap", given, "more than the tip's bore", "");
        }
        return 1 - ratio * ratio * ratio * ratio;
    }
}
