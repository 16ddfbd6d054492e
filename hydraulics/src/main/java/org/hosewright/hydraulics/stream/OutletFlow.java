package org.hosewright.hydraulics.stream;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** Flow of an open outlet by the pressure of its stream, Q = 29.84 c d^2 sqrt(p) in gpm, in and psi.
 *
 * @param coefficient what its edge leaves of the theory
 * @param source what it rests on
 */
public record OutletFlow(double coefficient, String source) {
    private static final double THEORY =
            29.84 * Constants.GPM_M3S / (Constants.INCH_M * Constants.INCH_M * Math.sqrt(Constants.PSI_PA));

    private static final String HYDRANT_OUTLETS = "NFPA 291 (from memory)";

    /** A rounded hydrant outlet. */
    public static final OutletFlow ROUNDED = new OutletFlow(0.90, HYDRANT_OUTLETS);

    /** A hydrant outlet with a square edge. */
    public static final OutletFlow SQUARE = new OutletFlow(0.80, HYDRANT_OUTLETS);

    /** A hydrant outlet that projects into the barrel. */
    public static final OutletFlow PROJECTING = new OutletFlow(0.70, HYDRANT_OUTLETS);

    /** The Underwriters' playpipe. */
    public static final OutletFlow PLAYPIPE = new OutletFlow(0.97, "Fire Protection Handbook (from memory)");

    /** Below this a pitot says little. @source trade sources: avoid pitot readings under 10 psi */
    private static final double LEAST_PSI = 10;

    private static final double MOST_PSI = 200;

    public OutletFlow {
        Numbers.requireWithin("coefficient of an outlet", coefficient, 0.5, 1, "");
    }

    public Flow of(Length diameter, Pressure pitot) {
        Numbers.requireWithin("pitot pressure", pitot.psi(), LEAST_PSI, MOST_PSI, "psi");
        double d_m = Numbers.requirePositive("diameter of an outlet", diameter.metres());
        return new Flow(THEORY * coefficient * d_m * d_m * Math.sqrt(pitot.pascals()));
    }
}
