package org.hosewright.files.yaml;

import java.util.Collection;
import java.util.Optional;

/** The known word that a mistyped one most likely meant. */
public final class Nearest {
    private Nearest() {}

    /** The nearest of some words; empty where none is near enough to be meant. */
    public static Optional<String> of(String typed, Collection<String> known) {
        String best = "";
        int least = Math.max(2, typed.length() / 2) + 1;
        for (String word : known) {
            int steps = steps(typed.toLowerCase(java.util.Locale.ROOT), word);
            if (steps < least) {
                least = steps;
                best = word;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** Letters to change, add or drop to make one word of the other. */
    private static int steps(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
