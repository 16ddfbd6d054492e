package org.hosewright.evidence.joint;

/** How much readings scatter, as multiples of what their instruments make one expect.
 *
 * <p>Pump gauge and tip gauge apart: one wild pump pressure must not make the tip pressures look loose.
 *
 * @param pump multiple for gauges at the pump and in the line
 * @param tip multiple for gauges at the tip
 * @param flow multiple for meters
 */
public record Scatter(double pump, double tip, double flow) {
    public static final Scatter EXPECTED = new Scatter(1, 1, 1);

    /** The multiple for a needle. */
    public double of(Channel channel) {
        return switch (channel) {
            case PUMP, MID -> pump;
            case TIP -> tip;
            case FLOW -> flow;
        };
    }

    /** How far apart two are: the largest change of a logarithm. */
    double apart(Scatter other) {
        double pumps = Math.abs(Math.log(pump / other.pump));
        double tips = Math.abs(Math.log(tip / other.tip));
        return Math.max(Math.max(pumps, tips), Math.abs(Math.log(flow / other.flow)));
    }
}
