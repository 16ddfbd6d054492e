package org.hosewright.evidence.calibration;

import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.SmoothBore;

/** What is said where the scale of flow is not settled: meter, nozzle and hose can be scaled together.
 *
 * @param survey the night
 */
record ScaleWords(Survey survey) {
    static final String ANCHOR =
            "a smooth bore of gauged diameter with a pitot on the same line, a tank filled against the clock,"
                    + " or a calibrated meter";

    Withheld of(Unknown unknown) {
        if (unknown.role() == Role.METER) {
            return new Withheld(
                    "factor of " + unknown.id(),
                    "the meter, the nozzle and the hose can be scaled together and no reading would change",
                    ANCHOR);
        }
        boolean gauged = false;
        boolean bore = false;
        for (Reading reading : survey.night().readings()) {
            if (unknown.id().startsWith(reading.laid().nozzle()) && survey.tip(reading) instanceof SmoothBore) {
                bore = true;
                gauged |= survey.night().gear().gauged().contains(reading.laid().nozzle());
            }
        }
        return new Withheld(
                "flow factor of " + unknown.id(),
                gauged
                        ? "nothing read tonight knows the flow better than the gauged bore does"
                        : "the nozzle, the meter and the hose can be scaled together and no reading would change",
                gauged
                        ? "a tank filled against the clock, or a calibrated meter"
                        : bore ? "the bore gauged, and a pitot at the tip" : ANCHOR);
    }
}
