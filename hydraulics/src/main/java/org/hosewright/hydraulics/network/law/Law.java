package org.hosewright.hydraulics.network.law;

import java.util.List;

/** How the pressure that a piece of a network takes hangs on the flow through it: never falling as the flow grows.
 *
 * <p>Flow is signed along the piece, from its first end to its second. What a pump adds is a negative loss. A law is
 * continuous and never falls, so the flows of a network of laws are those of least content, and there is one such set.
 *
 * @source E. Todini and S. Pilati, A gradient algorithm for the analysis of pipe networks, 1988 (content and its use)
 */
public sealed interface Law permits Square, Power, DarcyWeisbach, PumpGain, OneWay, Allowance, HeldTip {

    /** Pressure lost from the first end to the second [Pa] at a flow [m3/s]. */
    double loss_Pa(double flow_m3s);

    /** How fast the loss grows with flow [Pa s/m3]; 0 or more. */
    double slope(double flow_m3s);

    /** The slope at a flow whose loss is known already.
     *
     * @param flow_m3s the flow [m3/s]
     * @param loss_Pa what {@link #loss_Pa} gives for it [Pa]
     */
    default double slope(double flow_m3s, double loss_Pa) {
        return slope(flow_m3s);
    }

    /** A flow at which the loss is a drop [m3/s]; where several are, any one of them.
     *
     * @param drop_Pa pressure at the first end less that at the second [Pa]
     */
    double flow_m3s(double drop_Pa);

    /** Where to draw the next straight line of a search that moves from one flow to another: at the first kink between
     * them, on its far side, or at the flow moved to.
     */
    default double pause_m3s(double from_m3s, double to_m3s) {
        return to_m3s;
    }

    /** How far a flow and a drop miss one another [Pa]; where the law is a step, its drop may lie anywhere on it. */
    default double misfit_Pa(double flow_m3s, double drop_Pa) {
        return Math.abs(drop_Pa - loss_Pa(flow_m3s));
    }

    /** What the law's numbers are called, in the order that {@link #coefficient} counts them. */
    List<String> listCoefficients();

    /** A number of the law, in the unit that its name bears. */
    double coefficient(int at);

    /** The same law with one of its numbers changed. */
    Law withCoefficient(int at, double value);

    /** How fast the loss grows with one of the law's numbers at a flow held [Pa per unit of that number]. */
    double lossByCoefficient(int at, double flow_m3s);
}
