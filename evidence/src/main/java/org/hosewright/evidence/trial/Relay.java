package org.hosewright.evidence.trial;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** One lay of one kind, charged once: its readings are one observation, since what the lay does to them is the same for all.
 *
 * @param label the blind label
 * @param values what was measured, in SI; at least one
 */
public record Relay(String label, List<Double> values) {
    public Relay {
        values = List.copyOf(values);
        if (values.isEmpty()) {
            throw new InvalidInput("readings of a re-lay of " + label, "none", "at least one", "");
        }
        values.forEach(value -> Numbers.requireFinite("reading of a re-lay of " + label, value));
    }

    double mean() {
        return values.stream().mapToDouble(Double::doubleValue).sum() / values.size();
    }

    /** Sum of the squares of the readings about their mean. */
    double squares() {
        double mean = mean();
        return values.stream()
                .mapToDouble(value -> (value - mean) * (value - mean))
                .sum();
    }
}
