package org.hosewright.hydraulics.method;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** What a rule allows for appliances; policy, not physics, and different from place to place.
 *
 * @param each allowance for each appliance
 * @param from flow from which it is allowed; below it nothing
 */
public record ApplianceAllowance(Pressure each, Flow from) {
    /** 10 psi each from 350 gpm. @source Engineer's Test cards; IFSTA line */
    public static final ApplianceAllowance STRUCTURAL = new ApplianceAllowance(Pressure.ofPsi(10), Flow.ofGpm(350));

    /** 25 psi for a master stream, always. @source Engineer's Test cards */
    public static final ApplianceAllowance MASTER = new ApplianceAllowance(Pressure.ofPsi(25), new Flow(0));

    /** 5 psi each, always. @source NWCG, Firefighter Math */
    public static final ApplianceAllowance WILDLAND = new ApplianceAllowance(Pressure.ofPsi(5), new Flow(0));

    public ApplianceAllowance {
        Numbers.requireNotNegative("allowance", each.pascals());
        Numbers.requireNotNegative("flow of an allowance", from.cubicMetresPerSecond());
    }

    /** For so many appliances at a flow; the flow itself counts as reached. */
    public Pressure of(int appliances, Flow flow) {
        Numbers.requireNotNegative("appliances", appliances);
        boolean reached = Numbers.isAtLeast(flow.cubicMetresPerSecond(), from.cubicMetresPerSecond());
        return new Pressure(reached ? appliances * each.pascals() : 0);
    }
}
