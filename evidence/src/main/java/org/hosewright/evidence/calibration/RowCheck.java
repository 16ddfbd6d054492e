package org.hosewright.evidence.calibration;

import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;

/** The check of a reading the moment it is typed, against physics and the rows before it. */
public final class RowCheck {
    private RowCheck() {}

    /** The verdict on one reading.
     *
     * @param soFar the rows before it, with the gear that all rows name
     * @param next the row just completed
     * @throws org.hosewright.hydraulics.error.InvalidInput the reading is impossible: no flow with the nozzle open, or more
     *     pressure at the tip than the pump and the fall of the ground allow
     */
    public static Finding check(Night soFar, Reading next) {
        throw new UnsupportedOperationException();
    }
}
