package org.hosewright.evidence.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Numbers;

/** Which label stands for which kind, and in which order they are laid.
 *
 * <p>Rounds are laid one after the other; in each every kind is laid once, in an order of its own. What changes in the course
 * of the day (water, wind, tired crews) so falls on all kinds alike.
 *
 * @param key kind by label; not for those who read
 * @param order labels in the order of laying
 */
public record BlindOrder(Map<String, String> key, List<String> order) {
    private static final String LETTERS = "ABCDEFGHIJKL";

    /** More than anybody lays in one trial. */
    private static final int MOST_ROUNDS = 60;

    public BlindOrder {
        key = Collections.unmodifiableMap(new LinkedHashMap<>(key));
        order = List.copyOf(order);
    }

    /** An order drawn by lot.
     *
     * @param kinds names of what is compared; two or more, all different
     * @param rounds how often each is laid
     * @param seed what the lot is drawn from; the same seed draws the same
     */
    public static BlindOrder of(List<String> kinds, int rounds, long seed) {
        Numbers.requireWithin("kinds to compare", kinds.size(), 2, LETTERS.length(), "");
        requireRounds(rounds, 2);
        if (kinds.stream().distinct().count() < kinds.size()) {
            throw new InvalidInput("kinds to compare", String.join(", ", kinds), "names that all differ", "");
        }
        Dice dice = new Dice(seed);
        List<String> drawn = dice.shuffled(kinds);
        Map<String, String> key = new LinkedHashMap<>();
        for (int i = 0; i < drawn.size(); i++) {
            key.put(LETTERS.substring(i, i + 1), drawn.get(i));
        }
        return new BlindOrder(key, rounds(List.copyOf(key.keySet()), rounds, dice));
    }

    /** Further rounds of a trial that goes on under the same labels.
     *
     * @param labels of all kinds
     * @param rounds how often each is laid once more
     * @param seed what the lot is drawn from
     */
    public static List<String> more(List<String> labels, int rounds, long seed) {
        requireRounds(rounds, 1);
        return List.copyOf(rounds(labels, rounds, new Dice(seed)));
    }

    private static void requireRounds(int rounds, int least) {
        Numbers.requireWithin("re-lays of each kind", rounds, least, MOST_ROUNDS, "");
    }

    private static List<String> rounds(List<String> labels, int rounds, Dice dice) {
        List<String> order = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            order.addAll(dice.shuffled(labels));
        }
        return order;
    }
}
