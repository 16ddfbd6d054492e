package org.hosewright.hydraulics.quantity;

/** Loss of piping or an appliance that grows with the square of the flow, loss = k Q|Q|.
 *
 * @param k the loss at one cubic metre a second [Pa s2/m6]; finite
 */
public record PointLoss(double k) implements Quantity {
    public static final PointLoss NONE = new PointLoss(0);

    public PointLoss {
        Numbers.requireFinite("loss", k);
    }

    /** The piece that loses a pressure at a flow. */
    public static PointLoss of(Pressure loss, Flow at) {
        Numbers.requirePositive("flow of a loss", at.cubicMetresPerSecond());
        double q = at.cubicMetresPerSecond();
        return new PointLoss(loss.pascals() / (q * q));
    }

    /** The piece that loses so many psi at 100 gpm. */
    public static PointLoss ofUs(double k) {
        return new PointLoss(k * Constants.US_POINT_LOSS);
    }

    /** The piece that loses so many kPa at 100 L/min. */
    public static PointLoss ofSi(double k) {
        return new PointLoss(k * Constants.SI_POINT_LOSS);
    }

    public double us() {
        return k / Constants.US_POINT_LOSS;
    }

    public double metric() {
        return k / Constants.SI_POINT_LOSS;
    }

    /** The loss at a flow, with the sign of the flow. */
    public Pressure at(Flow flow) {
        double q = flow.cubicMetresPerSecond();
        return new Pressure(k * q * Math.abs(q));
    }

    @Override
    public double si() {
        return k;
    }
}
