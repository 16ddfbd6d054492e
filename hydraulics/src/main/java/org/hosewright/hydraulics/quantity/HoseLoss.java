package org.hosewright.hydraulics.quantity;

/** Friction loss of a hose in the trade's coefficient form, loss = r L Q|Q|.
 *
 * <p>The trade writes FL = C (Q/100)^2 (L/100); C is {@link #us()}.
 *
 * @param r the loss of one metre at one cubic metre a second [Pa s2/m7]; finite
 * @source IFSTA, Pumping and Aerial Apparatus Driver/Operator Handbook (from memory)
 * @validFor turbulent flow near the flow it was measured at
 */
public record HoseLoss(double r) implements Quantity {
    public HoseLoss {
        Numbers.requireFinite("hose loss", r);
    }

    /** The hose that loses a pressure over a length at a flow. */
    public static HoseLoss of(Pressure loss, Length over, Flow at) {
        Numbers.requirePositive("length of a hose loss", over.metres());
        Numbers.requirePositive("flow of a hose loss", at.cubicMetresPerSecond());
        double q = at.cubicMetresPerSecond();
        return new HoseLoss(loss.pascals() / (over.metres() * q * q));
    }

    /** The trade's coefficient C [psi per 100 ft at 100 gpm]. */
    public static HoseLoss ofUs(double c) {
        return new HoseLoss(c * Constants.US_HOSE_LOSS);
    }

    /** The metric coefficient [kPa per 100 m at 100 L/min]. */
    public static HoseLoss ofSi(double c) {
        return new HoseLoss(c * Constants.SI_HOSE_LOSS);
    }

    public double us() {
        return r / Constants.US_HOSE_LOSS;
    }

    public double metric() {
        return r / Constants.SI_HOSE_LOSS;
    }

    /** The loss of a length of this hose, with the sign of the flow; no flow loses exactly 0. */
    public Pressure over(Length length, Flow at) {
        double q = at.cubicMetresPerSecond();
        return new Pressure(r * length.metres() * q * Math.abs(q));
    }

    @Override
    public double si() {
        return r;
    }
}
