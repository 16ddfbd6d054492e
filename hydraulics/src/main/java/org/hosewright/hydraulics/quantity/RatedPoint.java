package org.hosewright.hydraulics.quantity;

/** A flow at a pressure, as a fog tip is rated: {@code 150 gpm @ 75 psi}.
 *
 * @param flow the flow; above 0
 * @param at the pressure that drives it; above 0
 */
public record RatedPoint(Flow flow, Pressure at) {
    public RatedPoint {
        Numbers.requirePositive("rated flow", flow.cubicMetresPerSecond());
        Numbers.requirePositive("rated pressure", at.pascals());
    }
}
