package org.hosewright.evidence.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hosewright.evidence.trial.Comparison.Verdict;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A trial never declares what its re-lays do not carry. */
class HonestyTest {
    private static final long SEED = 20_261_125;

    /** Scatter between re-lays of each kind [psi]: alike, and very unlike. */
    private static final List<List<Double>> SCATTERS =
            List.of(List.of(3.0, 3.0, 3.0, 3.0), List.of(1.0, 4.0, 2.0, 8.0), List.of(0.5, 8.0, 0.5, 0.5));

    /** Standard errors of a simulated share that chance may add to 5 %. */
    private static final double LUCK = 3;

    private static final List<Integer> THREE = List.of(3, 3, 3, 3);

    @Test
    void falseWinnersStayBelowFivePerCentHold() {
        nullTrials(600, 3, List.of(THREE, List.of(3, 6, 4, 8)));
    }

    @Test
    @Tag("long")
    void falseWinnersOfManyNullTrialsStayBelowFivePerCentHold() {
        nullTrials(8000, 4, List.of(THREE, List.of(3, 6, 4, 8), List.of(6, 6, 6, 6), List.of(2, 2, 2, 2)));
    }

    /** Kinds that are all the same, from two to so many, with equal and unequal counts of re-lays. */
    private static void nullTrials(int trials, int mostKinds, List<List<Integer>> laid) {
        System.out.println("seed " + SEED + ", null trials of each sort " + trials);
        for (List<Double> scatters : SCATTERS) {
            for (int kinds = 2; kinds <= mostKinds; kinds++) {
                for (List<Integer> counts : laid) {
                    check(trials, kinds, scatters, counts);
                }
            }
        }
    }

    private static void check(int trials, int kinds, List<Double> scatters, List<Integer> counts) {
        Random random = new Random(SEED);
        int told = 0;
        int won = 0;
        for (int i = 0; i < trials; i++) {
            TrialResult result = trial(kinds, scatters, counts, random);
            told += result.pairs().stream().anyMatch(pair -> pair.verdict() == Verdict.TOLD) ? 1 : 0;
            won += result.findBest().isPresent() ? 1 : 0;
        }
        String what = kinds + " kinds, scatter " + scatters + ", re-lays " + counts;
        System.out.println(what + ": told " + told + ", winners " + won + " of " + trials);
        assertThat((double) told / trials).as(what).isLessThan(0.05 + LUCK * Math.sqrt(0.05 * 0.95 / trials));
        assertThat(won).isLessThanOrEqualTo(told);
    }

    private static TrialResult trial(int kinds, List<Double> scatters, List<Integer> counts, Random random) {
        List<Relay> relays = new ArrayList<>();
        for (int k = 0; k < kinds; k++) {
            relays.addAll(Trials.relays(Trials.labels(kinds).get(k), counts.get(k), 40, scatters.get(k), random));
        }
        return TrialResult.of(Trials.stake(0), Trials.labels(kinds), relays);
    }
}
