package org.hosewright.evidence.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.evidence.trial.Comparison.Verdict;
import org.hosewright.hydraulics.error.InvalidInput;

/** What a trial's re-lays say of the kinds, and no more than they say.
 *
 * @param stake what hangs on it
 * @param standings each kind by itself, in the order of their labels
 * @param pairs every two kinds of which each was laid twice or more
 * @param missing labels laid fewer than two times: of them nothing can be said yet
 */
public record TrialResult(Stake stake, List<Standing> standings, List<Comparison> pairs, List<String> missing) {
    public TrialResult {
        standings = List.copyOf(standings);
        pairs = List.copyOf(pairs);
        missing = List.copyOf(missing);
    }

    /** The result of a trial as far as it has come.
     *
     * @param labels of all kinds in the trial, laid or not; all pairs of them are judged together
     * @throws InvalidInput a re-lay bears a label that is not in the trial
     */
    public static TrialResult of(Stake stake, Collection<String> labels, List<Relay> relays) {
        return of(stake, labels, relays, 1);
    }

    /** As {@link #of(Stake, Collection, List)}, for a trial that went on after a verdict was seen.
     *
     * @param looks how often a verdict is looked at, this one with it; the chance of even one false verdict stays at 5 % over all
     */
    public static TrialResult of(Stake stake, Collection<String> labels, List<Relay> relays, int looks) {
        Set<String> known = new LinkedHashSet<>(labels);
        relays.forEach(relay -> check(relay, known));
        List<Standing> standings = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (String label : known) {
            long laid =
                    relays.stream().filter(relay -> relay.label().equals(label)).count();
            if (laid > 0) {
                standings.add(Standing.of(label, relays));
            }
            if (laid < 2) {
                missing.add(label);
            }
        }
        return new TrialResult(
                stake, standings, pairs(new Comparing(stake, Family.of(known.size(), looks)), standings), missing);
    }

    private static void check(Relay relay, Set<String> known) {
        if (!known.contains(relay.label())) {
            throw new InvalidInput("label of a re-lay", relay.label(), "one of " + String.join(", ", known), "");
        }
    }

    private static List<Comparison> pairs(Comparing comparing, List<Standing> standings) {
        List<Comparison> pairs = new ArrayList<>();
        for (int i = 0; i < standings.size(); i++) {
            for (int j = i + 1; j < standings.size(); j++) {
                if (standings.get(i).relays() > 1 && standings.get(j).relays() > 1) {
                    pairs.add(comparing.compare(standings.get(i), standings.get(j)));
                }
            }
        }
        return pairs;
    }

    /** The one kind that was told to lose less, or to flow more, than each of the others; absent where the data carry none. */
    public Optional<String> findBest() {
        if (!missing.isEmpty()) {
            return Optional.empty();
        }
        return standings.stream()
                .map(Standing::label)
                .filter(label -> pairs.stream()
                                .filter(pair -> pair.verdict() == Verdict.TOLD
                                        && better(pair).equals(label))
                                .count()
                        == standings.size() - 1)
                .findFirst();
    }

    private String better(Comparison pair) {
        return stake.measure() == Measure.LOSS ? pair.first() : pair.second();
    }
}
