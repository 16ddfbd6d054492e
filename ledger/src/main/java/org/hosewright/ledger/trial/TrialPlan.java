package org.hosewright.ledger.trial;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** A trial as it is agreed on before anything is laid; never changed afterwards.
 *
 * @param name what people call it; not blank
 * @param kinds names of what is compared, two or more, all different
 * @param holders people who may see which label is which before the trial is opened; one or more
 * @param task what is measured, and what hangs on it
 * @param relays how often each kind is laid before a verdict
 */
public record TrialPlan(String name, List<String> kinds, List<String> holders, TrialTask task, int relays) {
    /** More than anybody lays of one kind in one trial. */
    public static final int MOST_RELAYS = 60;

    private static final int MOST_KINDS = 12;
    private static final int LONGEST = 80;

    public TrialPlan {
        kinds = kinds.stream().map(String::strip).toList();
        holders = holders.stream().map(String::strip).toList();
        requireName("name of the trial", name);
        kinds.forEach(kind -> requireName("kind that is compared", kind));
        holders.forEach(holder -> requireName("holder of the key", holder));
        Numbers.requireWithin("kinds to compare", kinds.size(), 2, MOST_KINDS, "");
        Numbers.requireWithin("holders of the key", holders.size(), 1, MOST_KINDS, "");
        Numbers.requireWithin("re-lays of each kind", relays, 2, MOST_RELAYS, "");
        if (kinds.stream().distinct().count() < kinds.size()) {
            throw new InvalidInput("kinds to compare", String.join(", ", kinds), "names that all differ", "");
        }
        task.stake();
    }

    private static void requireName(String what, String name) {
        if (name.isBlank() || name.length() > LONGEST) {
            throw new InvalidInput(what, name, "a name of at most " + LONGEST + " letters", "");
        }
    }

    /** True for somebody who may see the key before the trial is opened. */
    public boolean isHolder(String who) {
        return holders.stream().anyMatch(holder -> holder.equalsIgnoreCase(who.strip()));
    }
}
