package org.hosewright.ledger.kit;

import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** The company's present rule of thumb: a pressure for the tip and so much for each length of hose.
 *
 * @param tip pressure for the tip
 * @param loss pressure for each {@code over}
 * @param over the length it is for
 */
public record RuleOfThumb(Pressure tip, Pressure loss, Length over) {
    /** What the rule says to pump for a length, level. */
    public Pressure pumpFor(Length length) {
        return new Pressure(tip.pascals() + loss.pascals() * length.metres() / over.metres());
    }
}
