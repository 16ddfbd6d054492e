package org.hosewright.hydraulics.limit;

import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Numbers;

/** The people planned at a nozzle and the company's own figure for what they can hold.
 *
 * @param people at the nozzle; above 0
 * @param figure the reaction they can hold; above 0
 */
public record Crew(int people, Force figure) {
    public Crew {
        Numbers.requirePositive("people at the nozzle", people);
        Numbers.requirePositive("reaction for a crew of " + people, figure.newtons());
    }
}
