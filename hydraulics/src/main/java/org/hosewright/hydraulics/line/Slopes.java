package org.hosewright.hydraulics.line;

import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.quantity.Flow;

/** Exact derivatives of one line's results with respect to its resistance R and its nozzle's flow factor f.
 *
 * <p>With P = rise + R q^2 + tip(q / f): at a fixed flow dP/dR = q^2 and dP/df = -q/f dtip/dq; at a fixed pump
 * pressure the flow moves by the same divided by -dP/dq; at a fixed tip pressure q grows in proportion to f.
 *
 * @param flow_m3s the flow [m3/s]
 * @param factor the nozzle's flow factor [1]
 * @param pumpPerFlow dP/dq [Pa s/m3]
 * @param tipPerFlow dtip/dq [Pa s/m3]; 0 within an automatic tip's band
 */
public record Slopes(double flow_m3s, double factor, double pumpPerFlow, double tipPerFlow) {

    public static Slopes of(Line line, Flow flow) {
        double q = flow.cubicMetresPerSecond();
        double factor = line.nozzle().flow().map(known -> known.value().value()).orElse(1.0);
        double pumpPerFlow = LineCurve.of(line).slope(q);
        return new Slopes(q, factor, pumpPerFlow, tipPerFlow(line, q));
    }

    /** Of the needed pump pressure [m6/s2]. */
    public double pumpPerResistance() {
        return flow_m3s * flow_m3s;
    }

    /** Of the pump pressure that a fixed flow needs [Pa]. */
    public double pumpPerFactorAtFlow() {
        return -tipPerFlow * flow_m3s / factor;
    }

    /** Of the pump pressure that a fixed tip pressure needs [Pa]. */
    public double pumpPerFactorAtTip() {
        return (pumpPerFlow - tipPerFlow) * flow_m3s / factor;
    }

    /** Of the delivered flow [m9/(Pa s3)]. */
    public double flowPerResistance() {
        return flow_m3s == 0 ? 0 : -pumpPerResistance() / pumpPerFlow;
    }

    /** Of the delivered flow [m3/s]. */
    public double flowPerFactor() {
        return flow_m3s == 0 ? 0 : -pumpPerFactorAtFlow() / pumpPerFlow;
    }

    private static double tipPerFlow(Line line, double q) {
        if (line.tip() instanceof Automatic automatic
                && q >= automatic.from().cubicMetresPerSecond()
                && q < automatic.to().cubicMetresPerSecond()) {
            return 0;
        }
        return q == 0 ? 0 : 2 * line.tip().pressure_Pa(q) / q;
    }
}
