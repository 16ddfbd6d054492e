package org.hosewright.hydraulics.foam;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** An in-line foam eductor: the pressure and flow it must have to mix right.
 *
 * @param inlet pressure it needs at its inlet; below it the mix is rich, above it lean
 * @param flow the flow it is made for; the nozzle's must be the same
 * @source Firehouse: usually 200 psi at the inlet; back pressure at most 65 % of it
 */
public record Eductor(Pressure inlet, Flow flow) {
    private static final double BACK_SHARE = 0.65;

    /** A nozzle's flow that differs by more does not match [1]. @source common practice */
    private static final double MATCH = 0.01;

    public Eductor {
        Numbers.requirePositive("inlet pressure of an eductor", inlet.pascals());
        Numbers.requirePositive("flow of an eductor", flow.cubicMetresPerSecond());
    }

    /** The most that nozzle, hose and rise behind it may take. */
    public Pressure mostBackPressure() {
        return new Pressure(BACK_SHARE * inlet.pascals());
    }

    /** Pump pressure for an eductor at the end of a line.
     *
     * @param before loss of the hose to its inlet at its flow, rise included
     */
    public Pressure pump(Pressure before) {
        return new Pressure(inlet.pascals() + before.pascals());
    }

    public boolean matches(Flow nozzle) {
        double off = nozzle.cubicMetresPerSecond() / flow.cubicMetresPerSecond() - 1;
        return Math.abs(off) <= MATCH;
    }
}
