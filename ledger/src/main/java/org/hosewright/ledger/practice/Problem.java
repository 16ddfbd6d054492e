package org.hosewright.ledger.practice;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;

/** One question to a driver: what must the gauge show for this line?
 *
 * @param hosePackage id of the package
 * @param length hose length, whole sections
 * @param floors how many floors the nozzle is above the pump
 */
public record Problem(String hosePackage, Length length, int floors) {
    /** Higher than this a standpipe takes over. */
    private static final int MOST_FLOORS = 20;

    public Problem {
        if (floors < 0 || floors > MOST_FLOORS) {
            throw new InvalidInput("floors of the problem", Integer.toString(floors), "0 to " + MOST_FLOORS, "");
        }
    }
}
