package org.hosewright.hydraulics.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;

/** A pump pressure as it would be ordered, checked from both sides of what the losses may be.
 *
 * @param figure what the gauge must show
 * @param ordered the pump pressure behind it, before the discharge piping
 * @param rounding how it was rounded
 * @param state the line at the best estimate
 * @param least the line where the losses are at the upper end of their 95 % band: least flow
 * @param most the line where they are at the lower end: most flow, tip pressure and reaction
 * @param checks every check made
 * @param notChecked what was not checked and why, as sentences
 * @param cautions what people should know beside, as sentences
 * @param wouldDo the multiple of the step nearest to the wish that passes; empty where none would do
 */
public record OrderedCheck(
        Pressure figure,
        Pressure ordered,
        Rounding rounding,
        LineState state,
        LineState least,
        LineState most,
        List<Check> checks,
        List<String> notChecked,
        List<String> cautions,
        Optional<Pressure> wouldDo) {
    public OrderedCheck {
        checks = List.copyOf(checks);
        notChecked = List.copyOf(notChecked);
        cautions = List.copyOf(cautions);
    }

    public boolean passed() {
        return checks.stream().allMatch(Check::passed);
    }

    /** Why it is refused and what would do, as sentences; empty where it passes. */
    public List<String> refusal() {
        if (passed()) {
            return List.of();
        }
        List<String> says = new ArrayList<>();
        checks.stream().filter(check -> !check.passed()).map(Check::says).forEach(says::add);
        QuantityShown shown = QuantityShown.of(rounding.units());
        says.add(wouldDo.map(pressure -> shown.text(pressure) + " would do.")
                .orElse("No multiple of " + shown.text(rounding.step()) + " would do."));
        return says;
    }
}
