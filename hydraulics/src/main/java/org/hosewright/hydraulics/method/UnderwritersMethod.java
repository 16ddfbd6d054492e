package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** Freeman's rule for 2 1/2 in hose, per 100 ft: 2 Q^2 + Q from 100 gpm up, 2 Q^2 + Q/2 below, Q in hundreds of gpm.
 *
 * @source Engineer's Test cards, 2014: 400 gpm 36 psi to 1000 gpm 210 psi; Fire Engineering, "Determining engine
 *     pressures": 600 gpm 78 psi
 * @validFor 2 1/2 in hose of old make, up to 1000 gpm; modern hose loses less
 */
public record UnderwritersMethod() implements LossMethod {
    private static final double MOST_GPM = 1000;

    @Override
    public Pressure loss(Flow flow, Length length) {
        double q = LossMethod.gpm(flow, 0, MOST_GPM) / 100;
        double per100 = 2 * q * q + (Numbers.isAtLeast(q, 1) ? q : q / 2);
        return Pressure.ofPsi(per100 * length.feet() / 100);
    }
}
