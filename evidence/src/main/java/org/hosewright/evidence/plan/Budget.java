package org.hosewright.evidence.plan;

import java.util.Optional;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Volume;

/** What a test night may use up.
 *
 * @param time from the briefing to the last reading
 * @param water all that may be flowed, where it is limited
 * @param pace how long the parts take
 */
public record Budget(Seconds time, Optional<Volume> water, Pace pace) {
    /** The time that a test night is given where nobody says otherwise: two hours. */
    public static final Seconds EVENING = new Seconds(7200);

    /** More readings than this no crew takes in one night. */
    static final int MOST_READINGS = 30;

    public Budget {
        Numbers.requirePositive("time for the night", time.seconds());
        water.ifPresent(volume -> Numbers.requirePositive("water for the night", volume.cubicMetres()));
    }

    boolean allows(Selection selection) {
        double most_m3 = water.map(Volume::cubicMetres).orElse(Double.POSITIVE_INFINITY);
        return selection.size() <= MOST_READINGS
                && pace.setUp().seconds() + selection.seconds() <= time.seconds()
                && selection.water_m3() <= most_m3;
    }
}
