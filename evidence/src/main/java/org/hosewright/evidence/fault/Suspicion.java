package org.hosewright.evidence.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** How much speaks against some readings, and for which cause.
 *
 * @param group places of the readings, one or a whole lay's
 * @param innocent log-likelihood of their being right
 * @param guilty log-likelihoods of the causes
 */
public record Suspicion(List<Integer> group, double innocent, Map<Cause, Double> guilty) {
    /** Odds at which a cause is believed over its nearest rival, or a reading thought wrong at all. */
    static final double FAVOUR = Math.log(5);

    /** The guilt of a cause that explains everything, the most common one: a likelihood is at most 1. */
    static final double MOST_GUILT =
            Arrays.stream(Cause.values()).mapToDouble(Cause::logOdds).max().orElseThrow();

    /** What the likelihood does not exclude. */
    private static final double NEAR = 2;

    /** What a cause may be behind for having no size to fit: whole sections are counted, not fitted. */
    private static final double SIZE = 1;

    public Suspicion {
        group = List.copyOf(group);
        guilty = Collections.unmodifiableMap(new EnumMap<>(guilty));
    }

    /** Logarithm of the odds of the likeliest cause against no fault. */
    double against() {
        return guilt() - innocent;
    }

    /** The odds of the readings being right after all, against the likeliest cause. */
    public double oddsOfInnocence() {
        return Math.exp(-against());
    }

    /** Log-likelihood of the likeliest cause with its odds beforehand. */
    double guilt() {
        return odds(likeliest());
    }

    /** True where the readings should not be relied on.
     *
     * @param doubted whether the recorder doubted them
     */
    boolean isFounded(boolean doubted) {
        return against() > (doubted ? 0 : FAVOUR);
    }

    /** The likeliest cause. */
    public Cause likeliest() {
        return ranked().get(0);
    }

    /** True where the likeliest cause is favoured over the next by enough to be named. */
    public boolean isTold() {
        List<Cause> ranked = ranked();
        return ranked.size() < 2 || odds(ranked.get(0)) - odds(ranked.get(1)) >= FAVOUR;
    }

    /** The causes whose likelihood is as good as the likeliest one's, or nearly; that one first. */
    public List<Cause> listOpen() {
        double best = likelihood(likeliest());
        List<Cause> open = new ArrayList<>(ranked());
        open.removeIf(cause -> likelihood(cause) < best - NEAR - (cause == Cause.LENGTH ? SIZE : 0));
        return open;
    }

    private List<Cause> ranked() {
        List<Cause> ranked = new ArrayList<>(guilty.keySet());
        ranked.sort(Comparator.<Cause>comparingDouble(cause -> -odds(cause)).thenComparing(Comparator.naturalOrder()));
        return ranked;
    }

    private double odds(Cause cause) {
        return cause.logOdds() + likelihood(cause);
    }

    private double likelihood(Cause cause) {
        return guilty.getOrDefault(cause, Double.NEGATIVE_INFINITY);
    }
}
