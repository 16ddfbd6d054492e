package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** Subtract ten, 2 1/2 in hose, per 100 ft: gpm / 10 - 10.
 *
 * @source trade usage, taught in many places (from memory); the N method with N of 1
 * @validFor 160 to 350 gpm
 */
public record SubtractTen() implements LossMethod {
    private static final double LEAST_GPM = 160;
    private static final double MOST_GPM = 350;

    @Override
    public Pressure loss(Flow flow, Length length) {
        double gpm = LossMethod.gpm(flow, LEAST_GPM, MOST_GPM);
        return Pressure.ofPsi((gpm / 10 - 10) * length.feet() / 100);
    }
}
