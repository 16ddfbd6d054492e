package org.hosewright.hydraulics.equipment;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Pressure;

/** The opening that the water leaves by, in one setting.
 *
 * <p>Pressure is a monotone function of flow for every tip, the automatic one included, so that flow is the way in.
 */
public sealed interface Tip permits KFactorTip, Automatic {

    /** Total pressure at the tip that drives a flow.
     *
     * @param flow_m3s flow [m3/s]; zero and below give exactly 0
     * @return pressure [Pa]
     */
    double pressure_Pa(double flow_m3s);

    /** Flow that a pressure drives; inside an automatic tip's band the lowest flow that the band allows.
     *
     * @param pressure_Pa total pressure at the tip [Pa]; zero and below give exactly 0
     * @return flow [m3/s]
     */
    double flow_m3s(double pressure_Pa);

    /** Reaction on the people who hold it.
     *
     * @param pressure_Pa total pressure at the tip [Pa]
     * @param flow_m3s flow [m3/s]
     * @return force [N]
     */
    double reaction_N(double pressure_Pa, double flow_m3s);

    /** The pressure this tip is meant to work at. */
    Pressure at();

    /** The same tip letting a factor more or less water through at every pressure; its reaction follows the flow.
     *
     * @param factor true flow over rated; above 0
     */
    Tip flowing(double factor);

    /** Flow at the pressure this tip is meant to work at. */
    default Flow flowAt() {
        return new Flow(flow_m3s(at().pascals()));
    }

    /** Reaction at a pressure and the flow it drives. */
    default Force reaction(Pressure pressure) {
        return new Force(reaction_N(pressure.pascals(), flow_m3s(pressure.pascals())));
    }
}
