package org.hosewright.ledger.trial;

import java.time.Instant;
import java.util.Optional;

/** One reading of a trial as it was typed; never changed.
 *
 * @param lay number of the re-lay in the order of laying, from 1
 * @param taken what the needles showed
 * @param who typed it
 * @param at when
 * @param late true where the key was open by then: it is shown and not counted
 * @param aside why it is not counted, where somebody set it aside while the trial was blind
 */
public record TrialReading(int lay, Taken taken, String who, Instant at, boolean late, Optional<Aside> aside) {
    /** A reading set aside.
     *
     * @param who did it
     * @param why in that person's words; not blank
     */
    public record Aside(String who, String why) {}

    /** True where the verdict rests on it. */
    public boolean counts() {
        return !late && aside.isEmpty();
    }

    TrialReading withAside(Aside why) {
        return new TrialReading(lay, taken, who, at, late, Optional.of(why));
    }
}
