package org.hosewright.hydraulics.reach;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** How far a line goes in whole sections of its last hose.
 *
 * @param longest whole length at the best estimate; 0 where not even one section of the last hose does
 * @param sections whole sections in it, those of earlier hoses included
 * @param stop the limit that one more section would break, standing as it would be then
 * @param mostPump pump pressure that this limit allows; empty where it breaks at every length
 * @param longestSafe whole length that holds with 95 % confidence; this is what cards and maps show
 * @param assumed what the result rests on without evidence, as sentences
 */
public record ReachResult(
        Length longest,
        int sections,
        Limit stop,
        Optional<Pressure> mostPump,
        Length longestSafe,
        List<String> assumed) {
    public ReachResult {
        assumed = List.copyOf(assumed);
    }

    /** What one more section would break, as a phrase. */
    public String stoppedBy() {
        return stop.what();
    }
}
