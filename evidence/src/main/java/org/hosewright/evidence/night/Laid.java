package org.hosewright.evidence.night;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Length;

/** The line that a reading was taken on, by the company's names.
 *
 * @param engine id of the engine, where known
 * @param discharge id of the discharge
 * @param hose chain in laying order; not empty
 * @param rise tip above the pump, negative downhill; absent where nobody wrote it down
 * @param nozzle id of the nozzle
 * @param setting its setting; empty for the only one
 * @param shut true for a static reading, taken with the nozzle shut
 * @param lay readings of one lay share its length and rise
 */
public record Laid(
        Optional<String> engine,
        String discharge,
        List<Stretch> hose,
        Optional<Length> rise,
        String nozzle,
        String setting,
        boolean shut,
        String lay) {
    public Laid {
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
