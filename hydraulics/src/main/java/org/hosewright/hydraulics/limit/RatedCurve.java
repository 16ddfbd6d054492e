package org.hosewright.hydraulics.limit;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** What a pump in good order gives at a pressure: its rated capacity to 150 psi, 70 % at 200, 50 % at 250.
 *
 * <p>Straight lines between the points; beyond the last one the line runs on, down to 1 % at 375 psi and above.
 *
 * @param rated rated capacity; above 0
 * @source NFPA 1911 pump test points, as in reference sheets; straight lines between them are common practice
 * @validFor net pressure to 250 psi; where the intake's pressure is not known the discharge's is taken as net, which is
 *     on the safe side unless the pump lifts water
 */
public record RatedCurve(Flow rated) {
    private static final double[] PRESSURE_PA = {
        150 * Constants.PSI_PA, 200 * Constants.PSI_PA, 250 * Constants.PSI_PA, 375 * Constants.PSI_PA
    };
    private static final double LEAST_SHARE = 0.01;
    private static final double[] SHARE = {1, 0.7, 0.5, LEAST_SHARE};
    private static final String SAYS_US = says(QuantityShown.us());
    private static final String SAYS_SI = says(QuantityShown.si());

    public RatedCurve {
        Numbers.requirePositive("rated pump flow", rated.cubicMetresPerSecond());
    }

    /** The highest pressure that the rating speaks about. */
    public static Pressure lastRated() {
        return new Pressure(PRESSURE_PA[2]);
    }

    /** What the rating says, as a phrase in a company's units. */
    public static String rule(UnitSystem units) {
        return units == UnitSystem.US ? SAYS_US : SAYS_SI;
    }

    private static String says(QuantityShown shown) {
        return "rated curve by net pressure: 100 % to " + shown.text(new Pressure(PRESSURE_PA[0])) + ", 70 % at "
                + shown.text(new Pressure(PRESSURE_PA[1])) + ", 50 % at " + shown.text(lastRated());
    }

    /** How a flow stands against what the pump gives at a net pressure.
     *
     * @param what fit to follow "stopped by"
     */
    public Limit limit(String what, Flow flow, Pressure net) {
        return new Limit(what, LimitKind.PUMP, flow, capacity(net), rule(UnitSystem.US));
    }

    /** The flow that the pump gives at a net pressure. */
    public Flow capacity(Pressure pump) {
        return new Flow(rated.cubicMetresPerSecond() * along(PRESSURE_PA, SHARE, pump.pascals()));
    }

    /** The highest pressure at which the pump still gives a flow; below 0 where it never does. */
    public Pressure pressureFor(Flow flow) {
        double share = flow.cubicMetresPerSecond() / rated.cubicMetresPerSecond();
        if (share > 1) {
            return new Pressure(-1);
        }
        int i = share > SHARE[1] ? 0 : share > SHARE[2] ? 1 : 2;
        double part = (SHARE[i] - share) / (SHARE[i] - SHARE[i + 1]);
        return new Pressure(PRESSURE_PA[i] + Math.min(1, part) * (PRESSURE_PA[i + 1] - PRESSURE_PA[i]));
    }

    private static double along(double[] at, double[] values, double x) {
        if (x <= at[0]) {
            return values[0];
        }
        for (int i = 1; i < at.length; i++) {
            if (x <= at[i]) {
                return values[i - 1] + (values[i] - values[i - 1]) * (x - at[i - 1]) / (at[i] - at[i - 1]);
            }
        }
        return values[values.length - 1];
    }
}
