package org.hosewright.evidence.trial;

import java.util.OptionalInt;
import org.hosewright.evidence.trial.Comparison.Verdict;

/** The way from two kinds' re-lays to what may be said of them.
 *
 * @param stake what hangs on it
 * @param family all pairs of the trial
 */
record Comparing(Stake stake, Family family) {
    /** More than anybody lays. */
    private static final int MOST = 1000;

    Comparison compare(Standing one, Standing other) {
        boolean turned = one.mean() > other.mean();
        Standing first = turned ? other : one;
        Standing second = turned ? one : other;
        Welch welch = Welch.of(second, first, 2 * stake.stepVariance());
        double half = welch.half(family.level());
        double low = welch.difference() - half;
        double high = welch.difference() + half;
        Verdict verdict = verdict(low, high);
        double here = stake.mattersHere();
        return new Comparison(
                first.label(),
                second.label(),
                welch.difference(),
                welch.standardError(),
                welch.freedom(),
                low,
                high,
                family.adjusted(welch.chance()),
                welch.above(here) + 1 - welch.above(-here),
                verdict,
                verdict == Verdict.OPEN ? more(first, second, welch.difference()) : OptionalInt.empty());
    }

    private Verdict verdict(double low, double high) {
        if (low > 0) {
            return Verdict.TOLD;
        }
        return Math.max(-low, high) < stake.mattersHere() ? Verdict.ALIKE : Verdict.OPEN;
    }

    /** Re-lays of each, equally many more, after which the interval either leaves out 0 or stays within what matters. */
    private OptionalInt more(Standing first, Standing second, double difference) {
        double room = Math.max(difference, stake.mattersHere() - difference);
        return Least.find(1, MOST, more -> {
            Welch then = Welch.of(laidMore(second, more), laidMore(first, more), 2 * stake.stepVariance());
            return then.half(family.level()) < room;
        });
    }

    private static Standing laidMore(Standing standing, int more) {
        return new Standing(
                standing.label(), standing.relays() + more, standing.mean(), standing.scatter(), standing.within());
    }
}
