package org.hosewright.evidence.calibration;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Night;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;

/** What a night's readings say, all of them weighed together: the numbers, how well they are known, and what cannot be told.
 *
 * @param terms the numbers that the night determines
 * @param residual scatter of the pump pressure about the fit; absent where too few readings were used
 * @param readings each reading as the fit sees it, in the night's order
 * @param withheld what the night cannot tell, and what would settle it; on a night without numbers, why there are none
 * @param nextReading the reading that would tell most; absent where none would change anything
 * @param assumed each default and prior that the numbers rest on, as a sentence
 * @param belief the answers for any line of this gear
 * @param ifUsed by id of each reading set aside: the belief had it been used as well
 * @param leavingOut what would be told without one of the readings used
 */
public record Calibration(
        Terms terms,
        Optional<Known<Pressure>> residual,
        List<Judged> readings,
        List<Withheld> withheld,
        Optional<NextReading> nextReading,
        List<String> assumed,
        Belief belief,
        Map<String, Belief> ifUsed,
        LeavingOut leavingOut) {
    public Calibration {
        readings = List.copyOf(readings);
        withheld = List.copyOf(withheld);
        assumed = List.copyOf(assumed);
        ifUsed = Collections.unmodifiableMap(new LinkedHashMap<>(ifUsed));
    }

    /** True where no reading counts, so that there is no number and nothing to hold a reading against. */
    public boolean isSilent() {
        return readings.stream().noneMatch(Judged::used);
    }

    /** The same with more that it cannot tell. */
    public Calibration withholding(List<Withheld> all) {
        return new Calibration(terms, residual, readings, all, nextReading, assumed, belief, ifUsed, leavingOut);
    }

    /** The calibration of a night.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput a reading is impossible: no flow with the nozzle open, or more
     *     pressure at the tip than the pump and the fall of the ground allow
     */
    public static Calibration of(Night night) {
        return new Analysis(Survey.of(night)).calibration();
    }
}
