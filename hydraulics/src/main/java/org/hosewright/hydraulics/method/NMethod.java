package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** The N method, per 100 ft: gpm N / 10 - 10, with a number N for each size of hose.
 *
 * @source study cards "Hydraulics" of one department: N of 3 at 150 to 250 gpm, N of 1 at 250 to 400 gpm; the numbers 4
 *     and 2 stand on the same cards without worked examples
 * @validFor the flows of each size below; it is a straight line through a curve and goes wrong fast outside them
 */
public enum NMethod implements LossMethod {
    ONE_AND_HALF_INCH(4, 100, 150),
    ONE_AND_THREE_QUARTER_INCH(3, 100, 250),
    TWO_INCH(2, 150, 300),
    TWO_AND_HALF_INCH(1, 160, 400);

    private final int n;
    private final double least_gpm;
    private final double most_gpm;

    NMethod(int n, double least_gpm, double most_gpm) {
        this.n = n;
        this.least_gpm = least_gpm;
        this.most_gpm = most_gpm;
    }

    @Override
    public Pressure loss(Flow flow, Length length) {
        double gpm = LossMethod.gpm(flow, least_gpm, most_gpm);
        return Pressure.ofPsi((gpm * n / 10 - 10) * length.feet() / 100);
    }
}
