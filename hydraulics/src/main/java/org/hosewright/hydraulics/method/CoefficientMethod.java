package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** The coefficient form, FL = C (Q/100)^2 (L/100) with Q in gpm, L in ft and FL in psi.
 *
 * @param loss the hose's own loss; C is its value in psi per 100 ft at 100 gpm
 * @source City of Rohnert Park, driver/operator deck 3-8, "Calculating Friction Loss in Hose Lays"
 * @validFor turbulent flow; C belongs to the hose that was measured
 */
public record CoefficientMethod(HoseLoss loss) implements LossMethod {
    @Override
    public Pressure loss(Flow flow, Length length) {
        Numbers.requireNotNegative("flow", flow.cubicMetresPerSecond());
        Numbers.requireNotNegative("length", length.metres());
        return loss.over(length, flow);
    }

    /** The coefficient that a test shows: what the gauges at both ends differ by, less the rise.
     *
     * @param rise the far gauge above the near one, negative below it
     * @throws InvalidInput nothing is lost
     * @source Fire Apparatus Magazine, September 2018: 49 psi over 200 ft at 161 gpm is C 9.5
     */
    public static CoefficientMethod measured(Pressure near, Pressure far, Length rise, Length length, Flow flow) {
        double lost_Pa = near.pascals() - far.pascals() - Constants.WATER_PA_PER_M * rise.metres();
        if (lost_Pa <= 0) {
            throw new InvalidInput(
                    "loss between the gauges",
                    Numbers.plain(new Pressure(lost_Pa).psi()) + " psi",
                    "a near gauge that reads more than the far one and the rise together",
                    "");
        }
        return new CoefficientMethod(HoseLoss.of(new Pressure(lost_Pa), length, flow));
    }
}
