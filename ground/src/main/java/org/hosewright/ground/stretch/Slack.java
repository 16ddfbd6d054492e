package org.hosewright.ground.stretch;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** Hose that bends take: the company's own figures.
 *
 * @param corners counted on the way
 * @param perCorner hose for each
 * @param obstacles cars, walls, fences to go round: a loop more round a car, so that the line is not drawn under a tire
 * @param perObstacle hose for each
 */
public record Slack(int corners, Length perCorner, int obstacles, Length perObstacle) {
    public static final Slack NONE = new Slack(0, new Length(0), 0, new Length(0));

    public Slack {
        if (corners < 0 || obstacles < 0) {
            throw new InvalidInput("corners and obstacles", corners + " and " + obstacles, "0 or more of each", "");
        }
        Numbers.requireNotNegative("hose for a corner", perCorner.metres());
        Numbers.requireNotNegative("hose for an obstacle", perObstacle.metres());
    }

    Length length() {
        return new Length(corners * perCorner.metres() + obstacles * perObstacle.metres());
    }
}
