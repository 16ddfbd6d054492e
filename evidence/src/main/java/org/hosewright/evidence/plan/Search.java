package org.hosewright.evidence.plan;

import java.util.Optional;
import java.util.function.Predicate;

/** The search for the shortest list of readings that tells enough: grown by what each reading tells for its time, made better by
 * exchange, then thinned.
 *
 * @param criterion what is made less
 * @param allowed what a list must keep to: time, water, count
 * @param enough when a list tells enough
 */
record Search(Criterion criterion, Predicate<Selection> allowed, Predicate<Selection> enough) {
    /** The shortest list found; the fullest allowed one where none tells enough. */
    Selection found(Offers offers) {
        Selection grown = grown(offers);
        Exchange exchange = new Exchange(criterion, other -> allowed.test(other) && isNoLonger(other, grown));
        return checked(thinned(exchange.improved(grown)));
    }

    private static boolean isNoLonger(Selection other, Selection than) {
        return other.seconds() <= than.seconds() + 1e-6;
    }

    private Selection grown(Offers offers) {
        Selection now = Selection.none(offers);
        while (!enough.test(now)) {
            Optional<Selection> more = findMore(now);
            if (more.isEmpty()) {
                return now;
            }
            now = more.get();
        }
        return now;
    }

    /** One reading more, the one that gains most for the time it takes. */
    private Optional<Selection> findMore(Selection now) {
        double value = criterion.of(now.information());
        double bestRate = 0;
        Optional<Selection> best = Optional.empty();
        for (int offer = 0; offer < now.offers().size(); offer++) {
            Selection more = now.with(offer);
            if (!more.isSensible() || !allowed.test(more)) {
                continue;
            }
            double rate = (value - criterion.of(more.information())) / (more.seconds() - now.seconds());
            if (rate > bestRate * (1 + 1e-9)) {
                bestRate = rate;
                best = Optional.of(more);
            }
        }
        return best;
    }

    /** The list without the lays, then the readings, that it tells enough without. */
    private Selection thinned(Selection full) {
        Selection now = full;
        boolean thinner = enough.test(now);
        while (thinner) {
            Optional<Selection> merged = findMerged(now);
            Optional<Selection> fewer = merged.isPresent() ? merged : findFewer(now);
            now = fewer.orElse(now);
            thinner = fewer.isPresent();
        }
        return now;
    }

    /** The list with one lay less, its readings taken on another one. */
    private Optional<Selection> findMerged(Selection now) {
        Optional<Selection> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int from : now.lays()) {
            for (int to : now.lays()) {
                Optional<Selection> merged = from == to ? Optional.empty() : now.findMoved(from, to);
                double value =
                        merged.map(found -> criterion.of(found.information())).orElse(Double.POSITIVE_INFINITY);
                boolean good = merged.filter(found -> found.isSensible() && allowed.test(found) && enough.test(found))
                        .isPresent();
                if (value < least && good) {
                    least = value;
                    best = merged;
                }
            }
        }
        return best;
    }

    private Optional<Selection> findFewer(Selection now) {
        Optional<Selection> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int index = 0; index < now.size(); index++) {
            Selection fewer = now.without(index);
            double value = criterion.of(fewer.information());
            if (value < least && fewer.isSensible() && enough.test(fewer)) {
                least = value;
                best = Optional.of(fewer);
            }
        }
        return best;
    }

    /** The list with a second flow on each lay that has one: a reading that stands alone can be checked against nothing. */
    private Selection checked(Selection found) {
        Selection now = found;
        for (int lay : found.lays()) {
            if (flowing(now, lay) == 1) {
                now = findPaired(now, lay).orElse(now);
            }
        }
        return now;
    }

    private static long flowing(Selection now, int lay) {
        return now.picks().stream()
                .map(now.offers()::get)
                .filter(offer -> offer.lay() == lay && !offer.once())
                .count();
    }

    private Optional<Selection> findPaired(Selection now, int lay) {
        Optional<Selection> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int offer : now.offers().listOn(lay)) {
            Selection more = now.with(offer);
            double value = criterion.of(more.information());
            if (!now.offers().get(offer).once() && value < least && allowed.test(more)) {
                least = value;
                best = Optional.of(more);
            }
        }
        return best;
    }
}
