package org.hosewright.hydraulics.working;

import java.util.List;

/** A hand calculation as one would do it on paper.
 *
 * @param title the number that is worked out
 * @param steps in order; the last one gives it
 */
public record Working(String title, List<Step> steps) {
    public Working {
        steps = List.copyOf(steps);
    }
}
