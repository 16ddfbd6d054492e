package org.hosewright.evidence.trial;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.hosewright.evidence.probability.Student;

/** How one kind came out.
 *
 * @param label its blind label
 * @param relays how often it was laid
 * @param mean mean of its re-lays, in SI
 * @param scatter deviation between re-lays, in SI; absent where it was laid once
 * @param within deviation between readings of one charge, in SI; absent where no charge had two
 */
public record Standing(String label, int relays, double mean, OptionalDouble scatter, OptionalDouble within) {
    static Standing of(String label, List<Relay> all) {
        List<Relay> own =
                all.stream().filter(relay -> relay.label().equals(label)).toList();
        double mean = own.stream().mapToDouble(Relay::mean).sum() / own.size();
        double between = own.stream()
                .mapToDouble(relay -> (relay.mean() - mean) * (relay.mean() - mean))
                .sum();
        int spare = own.stream().mapToInt(relay -> relay.values().size() - 1).sum();
        double squares = own.stream().mapToDouble(Relay::squares).sum();
        return new Standing(
                label,
                own.size(),
                mean,
                own.size() < 2 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(between / (own.size() - 1))),
                spare == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / spare)));
    }

    /** Variance of the mean, as the re-lays show it; absent where it was laid once. */
    OptionalDouble variance() {
        return scatter.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(scatter.getAsDouble() * scatter.getAsDouble() / relays);
    }

    /** Half-width of the mean's own 95 % interval, in SI; absent where it was laid once. */
    public OptionalDouble half() {
        OptionalDouble variance = variance();
        return variance.isEmpty()
                ? variance
                : OptionalDouble.of(Math.sqrt(variance.getAsDouble()) * new Student(relays - 1).quantile(0.975));
    }

    /** How many more re-lays bring it to a count; empty where it has them. */
    OptionalInt more(int wanted) {
        return wanted > relays ? OptionalInt.of(wanted - relays) : OptionalInt.empty();
    }
}
