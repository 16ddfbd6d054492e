package org.hosewright.evidence.calibration;

import java.util.List;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Length;

/** A line that a question is asked about, by the company's names.
 *
 * @param hose chain in laying order; not empty
 * @param discharge id of the discharge
 * @param rise tip above the pump, negative downhill
 * @param nozzle id of the nozzle
 * @param setting its setting; empty for the only one
 */
public record Course(List<Stretch> hose, String discharge, Length rise, String nozzle, String setting) {
    public Course {
        hose = List.copyOf(hose);
    }

    /** The whole chain's length. */
    public Length length() {
        double sum_m = 0;
        for (Stretch part : hose) {
            sum_m += part.length().metres();
        }
        return new Length(sum_m);
    }
}
