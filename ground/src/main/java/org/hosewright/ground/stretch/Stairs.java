package org.hosewright.ground.stretch;

import org.hosewright.hydraulics.quantity.Length;

/** A climb inside a building.
 *
 * @param climbed floors from where the stairs are entered to the fire floor; 0 or more
 * @param rule how much hose they take, as the company chose
 */
public record Stairs(int climbed, StairRule rule) {
    public Stairs {
        StairRule.floors(climbed);
    }

    Length hose(Length section) {
        return rule.hose(climbed, section);
    }
}
