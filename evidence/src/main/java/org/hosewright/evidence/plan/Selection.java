package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hosewright.evidence.fit.Triangle;

/** Some of the offers, each once or more often, with what they tell and cost together.
 *
 * @param offers what there is to choose from
 * @param picks places of the chosen offers, in ascending order
 */
record Selection(Offers offers, List<Integer> picks) {
    Selection {
        List<Integer> sorted = new ArrayList<>(picks);
        sorted.sort(null);
        picks = List.copyOf(sorted);
    }

    static Selection none(Offers offers) {
        return new Selection(offers, List.of());
    }

    int size() {
        return picks.size();
    }

    Selection with(int offer) {
        List<Integer> more = new ArrayList<>(picks);
        more.add(offer);
        return new Selection(offers, more);
    }

    Selection without(int index) {
        List<Integer> fewer = new ArrayList<>(picks);
        fewer.remove(index);
        return new Selection(offers, fewer);
    }

    /** True where nothing that is worth taking once is taken twice, and no lay is laid for the shut nozzle alone. */
    boolean isSensible() {
        Set<Integer> flown = new TreeSet<>();
        for (int i = 0; i < picks.size(); i++) {
            Offer offer = offers.get(picks.get(i));
            if (!offer.once()) {
                flown.add(offer.lay());
            } else if (i > 0 && picks.get(i).equals(picks.get(i - 1))) {
                return false;
            }
        }
        return flown.containsAll(lays());
    }

    /** All readings of a lay taken on another instead; absent where that one does not bear as many. */
    Optional<Selection> findMoved(int from, int to) {
        List<Integer> here = offers.listOn(from);
        List<Integer> there = offers.listOn(to);
        List<Integer> moved = new ArrayList<>();
        for (int pick : picks) {
            int place = here.indexOf(pick);
            if (place >= there.size()) {
                return Optional.empty();
            }
            int now = place < 0 ? pick : there.get(place);
            if (!offers.get(now).once() || !moved.contains(now)) {
                moved.add(now);
            }
        }
        return Optional.of(new Selection(offers, moved));
    }

    Set<Integer> lays() {
        Set<Integer> lays = new TreeSet<>();
        picks.forEach(pick -> lays.add(offers.get(pick).lay()));
        return lays;
    }

    double seconds() {
        double sum = 0;
        for (int pick : picks) {
            sum += offers.get(pick).seconds();
        }
        for (int lay : lays()) {
            sum += offers.laying_s(lay);
        }
        return sum;
    }

    double water_m3() {
        double sum = 0;
        for (int pick : picks) {
            sum += offers.get(pick).water_m3();
        }
        for (int lay : lays()) {
            sum += offers.filling_m3(lay);
        }
        return sum;
    }

    Triangle information() {
        List<double[][]> pieces = new ArrayList<>();
        pieces.add(offers.beforehand());
        picks.forEach(pick -> pieces.add(offers.get(pick).rows()));
        return Triangle.of(offers.unknowns(), pieces);
    }
}
