package org.hosewright.hydraulics.order;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Pressure;

/** A pump pressure as it would be ordered, checked from both sides of what the losses may be.
 *
 * @param ordered pump pressure, a multiple of the step
 * @param state the line at the best estimate
 * @param least the line where the losses are at the upper end of their 95 % band: least flow
 * @param most the line where they are at the lower end: most tip pressure and reaction
 * @param checks every check made
 * @param notChecked what was not checked and why, as sentences
 * @param wouldDo the nearest multiple of the step that passes; the ordered one itself where it does, empty where none
 *     would do
 */
public record OrderedCheck(
        Pressure ordered,
        LineState state,
        LineState least,
        LineState most,
        List<Check> checks,
        List<String> notChecked,
        Optional<Pressure> wouldDo) {
    public OrderedCheck {
        checks = List.copyOf(checks);
        notChecked = List.copyOf(notChecked);
    }

    public boolean passed() {
        return checks.stream().allMatch(Check::passed);
    }
}
