package org.hosewright.hydraulics.profile;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;

/** Needed pump pressure against length, at one rise.
 *
 * @param label the rise as people say it: "level", "floor 3, 20 ft up"
 * @param points by rising length, two or more
 * @param longest longest stretch at the best estimate, where something stops it
 * @param longestSafe longest stretch that holds with 95 % confidence, where known; 0 where none does
 */
public record ReachCurve(
        String label, List<PressureAt> points, Optional<Length> longest, Optional<Length> longestSafe) {
    public ReachCurve {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new InvalidInput("curve '" + label + "'", "", "pressures at two lengths or more", "");
        }
    }
}
