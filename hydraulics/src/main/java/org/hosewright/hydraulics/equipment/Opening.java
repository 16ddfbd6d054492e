package org.hosewright.hydraulics.equipment;

import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** An opening that is no nozzle: sprinkler heads, an open hose end, a burst; Q = K sqrt(p).
 *
 * @param rated its flow at the rated pressure; above 0
 * @param at the rated pressure; above 0
 * @param jet bore of the solid jet that pushes back; 0 where nothing is held
 */
public record Opening(Flow rated, Pressure at, Length jet) implements KFactorTip {
    /** What the edge of a hose end leaves of a smooth bore's flow. @source study cards: 0.9 with 29.7 */
    private static final double HOSE_END = 0.9;

    public Opening {
        Numbers.requirePositive("flow of an opening", rated.cubicMetresPerSecond());
        Numbers.requirePositive("pressure of an opening", at.pascals());
        Numbers.requireNotNegative("jet of an opening", jet.metres());
    }

    /** Sprinkler heads side by side.
     *
     * @param at1psi flow of one head at 1 psi, which is its K factor
     * @param heads how many are open; above 0
     * @source USFA/NFA Coffee Break 2006-2: K 5.6 at 85 psi flows 51.63 gpm
     */
    public static Opening sprinklers(Flow at1psi, int heads) {
        Numbers.requirePositive("sprinkler heads", heads);
        return new Opening(new Flow(heads * at1psi.cubicMetresPerSecond()), Pressure.ofPsi(1), new Length(0));
    }

    /** The open end of a hose. */
    public static Opening hoseEnd(Length diameter) {
        double bore_m = Numbers.requirePositive("diameter of a hose end", diameter.metres());
        double flow_m3s = HOSE_END * Constants.SMOOTH_BORE * bore_m * bore_m * Math.sqrt(Constants.PSI_PA);
        return new Opening(new Flow(flow_m3s), Pressure.ofPsi(1), new Length(bore_m * Math.sqrt(HOSE_END)));
    }

    @Override
    public double k() {
        return rated.cubicMetresPerSecond() / Math.sqrt(at.pascals());
    }

    @Override
    public Tip flowing(double factor) {
        return new Opening(
                new Flow(rated.cubicMetresPerSecond() * factor), at, new Length(jet.metres() * Math.sqrt(factor)));
    }

    @Override
    public double reaction_N(double pressure_Pa, double flow_m3s) {
        return Constants.SOLID_REACTION * jet.metres() * jet.metres() * Math.max(0, pressure_Pa);
    }
}
