package org.hosewright.evidence.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.fault.Hearing;
import org.hosewright.evidence.joint.Survey;
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
        List<Reading> rows = new ArrayList<>(soFar.readings());
        rows.removeIf(row -> row.id().equals(next.id()));
        rows.add(next);
        Survey survey = Survey.of(new Night(rows, soFar.gear(), soFar.rulings(), soFar.units()));
        Judging judging = new Judging(survey, Hearing.of(survey));
        return judging.finding(rows.size() - 1);
    }
}
