package org.hosewright.hydraulics.supply;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** What a hydrant gives, from one flow test: Q = Q test (drop / drop test)^0.54.
 *
 * @param still pressure with nothing flowing
 * @param residual pressure while the test flow ran; below {@code still}, 0 or more
 * @param at the test flow; above 0
 * @source NFPA 291, exponent 0.54 (from memory)
 * @validFor the main as it was on the day of the test
 */
public record HydrantCurve(Pressure still, Pressure residual, Flow at) {
    private static final double EXPONENT = 0.54;

    /** The least share that a test should pull the pressure down by. @source NFPA 291, recent editions (from memory) */
    private static final double GOOD_DROP = 0.10;

    public HydrantCurve {
        Numbers.requirePositive("flow of a hydrant test", at.cubicMetresPerSecond());
        Numbers.requireNotNegative("residual of a hydrant test", residual.pascals());
        if (residual.pascals() >= still.pascals()) {
            String given = QuantityShown.both(residual);
            throw new InvalidInput("residual of a hydrant test", given, "less than the static pressure", "");
        }
    }

    /** The flow that leaves a pressure at the hydrant; 0 where it never stands so high. */
    public Flow flowAt(Pressure pressure) {
        double drop = (still.pascals() - pressure.pascals()) / dropOfTest_Pa();
        return new Flow(drop <= 0 ? 0 : at.cubicMetresPerSecond() * Math.pow(drop, EXPONENT));
    }

    /** The pressure that a flow leaves at the hydrant; below 0 where it does not give so much. */
    public Pressure pressureAt(Flow flow) {
        double share = Numbers.requireNotNegative("flow", flow.cubicMetresPerSecond()) / at.cubicMetresPerSecond();
        return new Pressure(still.pascals() - dropOfTest_Pa() * Math.pow(share, 1 / EXPONENT));
    }

    /** True where the test pulled the pressure down so little that projecting it is a guess. */
    public boolean isWeakTest() {
        return dropOfTest_Pa() < GOOD_DROP * still.pascals();
    }

    private double dropOfTest_Pa() {
        return still.pascals() - residual.pascals();
    }
}
