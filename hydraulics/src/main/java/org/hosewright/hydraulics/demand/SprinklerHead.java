package org.hosewright.hydraulics.demand;

import org.hosewright.hydraulics.equipment.Opening;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** A sprinkler head, Q = K sqrt(p) with Q in gpm and p in psi.
 *
 * @param k its K factor [gpm per sqrt(psi)]; 1 to 35
 * @source USFA/NFA Coffee Break 2006-2: K 5.6 at 85 psi flows 51.63 gpm
 */
public record SprinklerHead(double k) {
    /** The usual head. @source USFA/NFA Coffee Break 2006-2 */
    public static final SprinklerHead STANDARD = new SprinklerHead(5.6);

    public SprinklerHead {
        Numbers.requireWithin("K factor of a sprinkler", k, 1, 35, "gpm per root psi");
    }

    public Flow flow(Pressure pressure) {
        double head_Pa = Numbers.requireNotNegative("pressure", pressure.pascals());
        return new Flow(Opening.sprinklers(Flow.ofGpm(k), 1).flow_m3s(head_Pa));
    }
}
