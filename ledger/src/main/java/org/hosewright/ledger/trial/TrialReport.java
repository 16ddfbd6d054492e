package org.hosewright.ledger.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.trial.TrialResult;
import org.hosewright.evidence.trial.TrialWords;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** What a trial shows so far, as far as it may be looked at.
 *
 * <p>While re-lays of the order are unread and the key is shut there is no verdict: one that is looked at after every re-lay
 * finds a difference sooner or later where there is none.
 *
 * @param trial as kept
 * @param units the company's
 * @param result of the re-lays that count; absent while it is too early
 */
public record TrialReport(KeptTrial trial, UnitSystem units, Optional<TrialResult> result) {
    /** The report of a trial. */
    public static TrialReport of(KeptTrial trial, UnitSystem units) {
        boolean due = trial.isRead() || trial.opened().isPresent();
        return new TrialReport(
                trial,
                units,
                due
                        ? Optional.of(TrialResult.of(
                                trial.plan().task().stake(),
                                trial.labels(),
                                trial.relays(),
                                trial.stages().size()))
                        : Optional.empty());
    }

    /** Labels until the key is open, kinds from then on. */
    public TrialWords words() {
        return new TrialWords(units, trial.opened().map(Opened::kinds).orElse(Map.of()));
    }

    /** The answer in one sentence. */
    public String answer() {
        return result.map(words()::verdict)
                .orElseGet(() -> trial.laid() + " of " + trial.order().size()
                        + " re-lays are read. The verdict waits for the rest.");
    }

    /** One sentence for each pair, and for each kind of which nothing can be said; none while it is too early. */
    public List<String> pairs() {
        return result.map(words()::list).orElse(List.of());
    }

    /** What one has to know beside the answer. */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        remarks.add(size());
        if (result.isEmpty()) {
            remarks.add(
                    "A verdict looked at after every re-lay finds a difference sooner or later where there is none.");
        }
        if (trial.stages().size() > 1) {
            remarks.add(
                    "Re-lays were added " + times(trial.stages().size() - 1)
                            + " after a verdict; the intervals are wider for it, so that all looks together are wrong 5 times in 100.");
        }
        trial.opened().ifPresent(open -> {
            remarks.add("The key was opened by " + open.who() + "; that cannot be undone.");
            if (!trial.isRead()) {
                remarks.add("It was opened with " + trial.laid() + " of "
                        + trial.order().size() + " re-lays read; the rest of them will not count.");
            }
        });
        count(trial.readings().stream().filter(TrialReading::late).count(), "typed after the key was opened")
                .ifPresent(remarks::add);
        count(trial.readings().stream().filter(one -> one.aside().isPresent()).count(), "set aside while blind")
                .ifPresent(remarks::add);
        return remarks;
    }

    private String size() {
        TrialTask task = trial.plan().task();
        QuantityShown shown = QuantityShown.of(units);
        int needed = task.needed(trial.plan().kinds().size());
        String size = needed + " re-lays of each find a difference of " + shown.text(task.find())
                + " four times in five, where re-lays of one kind differ by " + shown.text(task.scatter());
        int planned = trial.plan().relays();
        return size + (planned < needed ? "; only " + planned + " were planned." : "; " + planned + " were planned.");
    }

    private static Optional<String> count(long readings, String what) {
        return readings == 0
                ? Optional.empty()
                : Optional.of((readings == 1 ? "1 reading was " : readings + " readings were ") + what
                        + "; shown below, not counted.");
    }

    private static String times(int count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }
}
