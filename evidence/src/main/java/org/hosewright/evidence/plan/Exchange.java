package org.hosewright.evidence.plan;

import java.util.Optional;
import java.util.function.Predicate;

/** Makes a selection better without making it longer: one reading, or all readings of a lay, for others.
 *
 * <p>Each step takes the best exchange there is; a step that gains nothing is never taken, so that the end is never worse than
 * the beginning.
 *
 * @param criterion what is made less
 * @param allowed what a selection must keep to
 * @source V. V. Fedorov, Theory of Optimal Experiments, 1972: the exchange algorithm
 */
record Exchange(Criterion criterion, Predicate<Selection> allowed) {
    /** A gain below this share is rounding. */
    private static final double ROUNDING = 1e-9;

    private static final int MOST_STEPS = 200;

    Selection improved(Selection start) {
        Selection now = start;
        for (int step = 0; step < MOST_STEPS; step++) {
            Optional<Selection> better = findBetter(now);
            if (better.isEmpty()) {
                return now;
            }
            now = better.get();
        }
        return now;
    }

    private Optional<Selection> findBetter(Selection now) {
        double value = criterion.of(now.information());
        Best best = new Best(value - ROUNDING * Math.abs(value));
        for (int index = 0; index < now.size(); index++) {
            if (index > 0 && now.picks().get(index).equals(now.picks().get(index - 1))) {
                continue;
            }
            Selection fewer = now.without(index);
            for (int offer = 0; offer < now.offers().size(); offer++) {
                best.consider(fewer.with(offer));
            }
        }
        moved(now, best);
        return best.found;
    }

    /** All readings of a lay taken on another lay instead. */
    private void moved(Selection now, Best best) {
        int lays = now.offers().lays();
        for (int from : now.lays()) {
            for (int to = 0; to < lays; to++) {
                if (!now.lays().contains(to)) {
                    now.findMoved(from, to).ifPresent(best::consider);
                }
            }
        }
    }

    private final class Best {
        private double value;
        private Optional<Selection> found = Optional.empty();

        Best(double value) {
            this.value = value;
        }

        void consider(Selection other) {
            if (!other.isSensible() || !allowed.test(other)) {
                return;
            }
            double its = criterion.of(other.information());
            if (its < value) {
                value = its;
                found = Optional.of(other);
            }
        }
    }
}
