package org.hosewright.hydraulics.supply;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** Pumpers in line: how far apart, and how many.
 *
 * @param pump pressure that each pumps at
 * @param keep pressure to arrive with at the next
 * @source distance from the coefficient form; pumpers R/D + 1: trade sources; intake 20 psi at least: IFSTA (from memory)
 */
public record Relay(Pressure pump, Pressure keep) {
    public Relay {
        Numbers.requirePositive("pump pressure of a relay above what is kept", pump.pascals() - keep.pascals());
        Numbers.requireNotNegative("pressure kept in a relay", keep.pascals());
    }

    /** The longest lay between two pumpers, level. */
    public Length apart(HoseLoss hose, Flow flow) {
        double q = Numbers.requirePositive("flow", flow.cubicMetresPerSecond());
        double perMetre = Numbers.requirePositive("hose loss", hose.r()) * q * q;
        return new Length((pump.pascals() - keep.pascals()) / perMetre);
    }

    /** Pumpers for a distance, the one at the water and the one at the fire among them. */
    public int pumpers(Length distance, HoseLoss hose, Flow flow) {
        double lays = Numbers.requirePositive("distance", distance.metres())
                / apart(hose, flow).metres();
        return (int) Math.ceil(lays - 1e-9) + 1;
    }
}
