package org.hosewright.hydraulics.quantity;

/** So much pressure for so much hose, whatever the flow, as a rule of thumb has it: {@code 18 psi / 100 ft}.
 *
 * @param loss the pressure; 0 or more
 * @param over the length it is for; above 0
 */
public record LossByLength(Pressure loss, Length over) {
    public LossByLength {
        Numbers.requireNotNegative("loss by length", loss.pascals());
        Numbers.requirePositive("length of a loss", over.metres());
    }
}
