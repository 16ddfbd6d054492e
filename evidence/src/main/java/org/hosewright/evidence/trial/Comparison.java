package org.hosewright.evidence.trial;

import java.util.OptionalInt;

/** Two kinds beside each other.
 *
 * @param first label of the one that loses or flows less in the trial
 * @param second label of the other
 * @param difference how much more the second does, as measured, in SI; 0 or more
 * @param standardError of the difference, in SI
 * @param freedom degrees of freedom of the standard error, by Satterthwaite
 * @param low lower end of the 95 % interval of the difference, all pairs of the trial together
 * @param high upper end
 * @param chance probability of a difference as large where there is none, all pairs together, by Welch; the verdict rests on the interval, which is a little more careful
 * @param matters probability that the difference is one that a decision turns on, this pair by itself
 * @param verdict what the data carry
 * @param more re-lays of each that would settle it if they go on as they have; only for an open pair
 */
public record Comparison(
        String first,
        String second,
        double difference,
        double standardError,
        double freedom,
        double low,
        double high,
        double chance,
        double matters,
        Verdict verdict,
        OptionalInt more) {

    /** What the data carry about two kinds. */
    public enum Verdict {
        /** They differ. */
        TOLD("told"),
        /** If they differ at all, then by less than a decision turns on. */
        ALIKE("alike"),
        /** They cannot be told apart, and a difference that matters is not ruled out. */
        OPEN("open");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /** The word in files. */
        public String word() {
            return word;
        }
    }
}
