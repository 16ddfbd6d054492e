package org.hosewright.hydraulics.line;

import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.quantity.Flow;

/** What a line is there to do: its tip's working pressure, or a flow where pressure does not tell the flow.
 *
 * @param ask what to solve for
 * @param assumed what had to be assumed, as sentences
 */
public record Duty(Ask ask, List<String> assumed) {
    public Duty {
        assumed = List.copyOf(assumed);
    }

    /** The duty of a line.
     *
     * @param target flow wanted, where stated; only an automatic tip needs it
     */
    public static Duty of(Line line, Optional<Flow> target) {
        if (!(line.tip() instanceof Automatic automatic)) {
            return new Duty(new Ask.AtTip(line.tip().at()), List.of());
        }
        if (target.isPresent()) {
            return new Duty(new Ask.AtFlow(target.get()), List.of());
        }
        String says = "No target flow is stated for " + line.nozzle().id()
                + ", an automatic tip: the highest flow of its band is taken.";
        return new Duty(new Ask.AtFlow(automatic.to()), List.of(says));
    }
}
