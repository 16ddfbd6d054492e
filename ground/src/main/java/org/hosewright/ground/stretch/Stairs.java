package org.hosewright.ground.stretch;

/** A climb inside a building.
 *
 * @param climbed floors from where the stairs are entered to the fire floor; 0 or more
 * @param rule how much hose they take, as the company chose
 */
public record Stairs(int climbed, StairRule rule) {
    public Stairs {
        rule.sections(climbed);
    }

    int sections() {
        return rule.sections(climbed);
    }
}
