package org.hosewright.ledger.trial;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.evidence.trial.Relay;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.ledger.history.Act;

/** A blind trial as the company keeps it, its key apart from it until it is opened.
 *
 * @param plan as agreed on before
 * @param stages labels in the order of laying, stage by stage; the first is the plan's, each further one was added after a verdict
 * @param readings in the order of typing
 * @param shown when the key was shown to a holder
 * @param opened the labels, once they are open to everybody
 */
public record KeptTrial(
        TrialPlan plan,
        List<List<String>> stages,
        List<TrialReading> readings,
        List<Shown> shown,
        Optional<Opened> opened) {
    private static final int MOST_READINGS = 20;

    public KeptTrial {
        stages = stages.stream().map(List::copyOf).toList();
        readings = List.copyOf(readings);
        shown = List.copyOf(shown);
        int laid = stages.stream().mapToInt(List::size).sum();
        readings.forEach(reading -> check(reading, laid, plan.task()));
    }

    /** The key shown to a holder.
     *
     * @param who saw it
     * @param at when
     */
    public record Shown(String who, Instant at) {}

    /** A trial in which nothing was laid yet. */
    public static KeptTrial begin(TrialPlan plan, List<String> order) {
        return new KeptTrial(plan, List.of(order), List.of(), List.of(), Optional.empty());
    }

    private static void check(TrialReading reading, int laid, TrialTask task) {
        Numbers.requireWithin("number of the re-lay", reading.lay(), 1, laid, "");
        if (reading.taken().measure() != task.measure()) {
            throw new InvalidInput(
                    "reading of re-lay " + reading.lay(),
                    reading.taken().measure().word(),
                    "what the trial measures: " + task.measure().word(),
                    "");
        }
    }

    /** Labels of all kinds, in the order of the alphabet. */
    public List<String> labels() {
        return order().stream().distinct().sorted().toList();
    }

    /** Labels in the order of laying, all stages. */
    public List<String> order() {
        return stages.stream().flatMap(List::stream).toList();
    }

    /** Number of re-lays with a reading that counts. */
    public int laid() {
        return (int) counted().map(TrialReading::lay).distinct().count();
    }

    /** True where every re-lay of the order has a reading that counts. */
    public boolean isRead() {
        return laid() == order().size();
    }

    /** The re-lays as the verdict counts them: readings of one re-lay are one observation. */
    public List<Relay> relays() {
        Map<Integer, List<Double>> values = new LinkedHashMap<>();
        counted()
                .forEach(reading -> values.computeIfAbsent(reading.lay(), any -> new ArrayList<>())
                        .add(reading.taken().value().si()));
        List<String> order = order();
        List<Relay> relays = new ArrayList<>();
        values.forEach((lay, read) -> relays.add(new Relay(order.get(lay - 1), read)));
        return relays;
    }

    private Stream<TrialReading> counted() {
        return readings.stream().filter(TrialReading::counts);
    }

    /** With one more reading, marked where the key is open. */
    public KeptTrial withReading(int lay, Taken taken, Act act, Instant at) {
        if (opened.isEmpty() && plan.isHolder(act.who())) {
            throw new InvalidInput("person who types readings", act.who(), "somebody who does not hold the key", "");
        }
        if (readings.stream().filter(one -> one.lay() == lay).count() >= MOST_READINGS) {
            throw new InvalidInput("readings of re-lay " + lay, "one more", "at most " + MOST_READINGS, "");
        }
        var reading = new TrialReading(lay, taken, act.who(), at, opened.isPresent(), Optional.empty());
        return new KeptTrial(plan, stages, plus(readings, reading), shown, opened);
    }

    /** With a reading set aside, while the trial is blind.
     *
     * @param number of the reading in the order of typing, from 1
     */
    public KeptTrial withAside(int number, Act act) {
        Numbers.requireWithin("number of the reading", number, 1, readings.size(), "");
        requireBlind("set a reading aside");
        if (plan.isHolder(act.who())) {
            throw new InvalidInput("person who sets aside", act.who(), "somebody who does not hold the key", "");
        }
        if (act.why().isBlank()) {
            throw new InvalidInput("reason for setting aside", "", "what went wrong with the reading", "");
        }
        List<TrialReading> more = new ArrayList<>(readings);
        more.set(number - 1, readings.get(number - 1).withAside(new TrialReading.Aside(act.who(), act.why())));
        return new KeptTrial(plan, stages, more, shown, opened);
    }

    /** With further re-lays, once all of the order are read. */
    public KeptTrial withStage(List<String> order) {
        requireBlind("lay more");
        if (!isRead()) {
            throw new InvalidInput("further re-lays", "before all are read", "reading those of the order first", "");
        }
        return new KeptTrial(plan, plus(stages, order), readings, shown, opened);
    }

    /** With the key shown to a holder. */
    public KeptTrial withShown(Act act, Instant at) {
        requireHolder(act);
        return new KeptTrial(plan, stages, readings, plus(shown, new Shown(act.who(), at)), opened);
    }

    /** With the labels opened to everybody. */
    public KeptTrial withOpened(TrialKey key, Act act, Instant at) {
        requireHolder(act);
        requireBlind("open the key");
        return new KeptTrial(
                plan, stages, readings, shown, Optional.of(new Opened(act.who(), at, act.why(), key.kinds())));
    }

    private void requireHolder(Act act) {
        if (!plan.isHolder(act.who())) {
            throw new InvalidInput(
                    "person who asks for the key",
                    act.who(),
                    "one who holds it: " + String.join(", ", plan.holders()),
                    "");
        }
    }

    private void requireBlind(String wish) {
        opened.ifPresent(open -> {
            throw new InvalidInput("wish to " + wish, "after " + open.who() + " opened the key", "a new trial", "");
        });
    }

    private static <T> List<T> plus(List<T> all, T one) {
        List<T> more = new ArrayList<>(all);
        more.add(one);
        return more;
    }
}
