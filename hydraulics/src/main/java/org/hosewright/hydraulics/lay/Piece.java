package org.hosewright.hydraulics.lay;

import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;

/** One piece of a lay while it flows; what it takes is what stands before it less what stands behind it.
 *
 * @param place the line, leg or join that it belongs to
 * @param what its name
 * @param run the hose, where it is hose
 * @param appliance the fitting, where it is a named one
 * @param flow through it
 * @param before pressure at its start
 * @param lift what its rise takes, negative where it falls
 * @param after pressure at its end
 * @param still highest pressure in it with every outlet shut and the pump untouched
 */
public record Piece(
        String place,
        String what,
        Optional<Run> run,
        Optional<Appliance> appliance,
        Flow flow,
        Pressure before,
        Pressure lift,
        Pressure after,
        Pressure still) {
    /** The same piece, its place said in other words. */
    Piece in(String otherPlace) {
        return new Piece(otherPlace, what, run, appliance, flow, before, lift, after, still);
    }

    /** What friction takes. */
    public Pressure loss() {
        return new Pressure(before.pascals() - lift.pascals() - after.pascals());
    }

    /** Velocity of the water and what a sudden stop may add, where it is hose. */
    public Optional<Surge> surge() {
        return run.map(hose -> Surge.of(hose.hose().diameter(), flow));
    }
}
