package org.hosewright.evidence.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Two faults that hide each other: beside the other each looks like scatter, since the other has widened it.
 *
 * <p>Both are taken out together, and each is asked about beside what is left. The pair bears the odds of two faults, so that a
 * night does not become a good one by leaving out its two ends.
 */
final class Masking {
    /** Only the readings that fit worst are paired: a masked fault still fits badly. */
    private static final int MOST_PAIRED = 12;

    /** What must be left to say how the others scatter. */
    private static final int LEAST_LEFT = 4;

    /** A linearised misfit of two groups below this cannot outweigh the odds of two faults. */
    private static final double CLOSER_LOOK = 10;

    private final Standing standing;

    Masking(Standing standing) {
        this.standing = standing;
    }

    /** The two groups that hide each other most surely, with what speaks against each; empty where none do.
     *
     * @param groups readings that may be wrong, one or a whole lay's
     * @param than what must be outdone
     */
    List<Suspicion> find(List<List<Integer>> groups, double than) {
        List<List<Integer>> worst = new ArrayList<>(groups);
        worst.sort(Comparator.comparingDouble(group -> -standing.misfit(group)));
        worst = worst.subList(0, Math.min(MOST_PAIRED, worst.size()));
        List<Suspicion> found = List.of();
        double most = Math.max(than, Suspicion.FAVOUR);
        for (int i = 0; i < worst.size(); i++) {
            for (int j = i + 1; j < worst.size(); j++) {
                Optional<Two> two = ask(worst.get(i), worst.get(j), most);
                if (two.isPresent()) {
                    most = two.get().against();
                    found = List.of(two.get().one(), two.get().other());
                }
            }
        }
        return found;
    }

    private record Two(Suspicion one, Suspicion other, double against) {}

    /** Two groups together, where they outdo what was found so far. What cannot is not worked out to the end. */
    private Optional<Two> ask(List<Integer> one, List<Integer> other, double than) {
        List<Integer> both = new ArrayList<>(one);
        both.addAll(other);
        boolean apart = one.stream().noneMatch(other::contains);
        if (!apart || both.size() + LEAST_LEFT > standing.active().size() || standing.misfit(both) < CLOSER_LOOK) {
            return Optional.empty();
        }
        double innocent = standing.innocent(both);
        if (2 * Suspicion.MOST_GUILT - innocent <= than) {
            return Optional.empty();
        }
        Suspicion first = standing.ask(one, other);
        if (!standing.isFounded(first) || first.guilt() + Suspicion.MOST_GUILT - innocent <= than) {
            return Optional.empty();
        }
        Suspicion second = standing.ask(other, one);
        double against = first.guilt() + second.guilt() - innocent;
        boolean outdone = standing.isFounded(second) && against > than;
        return outdone ? Optional.of(new Two(first, second, against)) : Optional.empty();
    }
}
