package org.hosewright.hydraulics.network.law;

/** How the pressure that a piece of a network takes hangs on the flow through it: never falling as the flow grows.
 *
 * <p>Flow is signed along the piece, from its first end to its second. A pump or a held pressure has a negative loss.
 */
public sealed interface Law permits Square, Power, PumpGain, OneWay, Allowance, HeldTip {

    /** Pressure lost from the first end to the second [Pa] at a flow [m3/s]. */
    double loss_Pa(double flow_m3s);

    /** How fast the loss grows with flow [Pa s/m3]; 0 or more. */
    double slope(double flow_m3s);

    /** A flow at which the loss is a drop [m3/s]; where several are, any one of them.
     *
     * @param drop_Pa pressure at the first end less that at the second [Pa]
     */
    double flow_m3s(double drop_Pa);
}
