package org.hosewright.evidence.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.hosewright.evidence.trial.Comparison.Verdict;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;

/** How many re-lays a trial needs. */
class SampleSizeTest {
    private static final long SEED = 20_261_125;

    /** Standard error of a simulated power over 2000 trials is 0.9 %; three of them. */
    private static final double LUCK = 0.027;

    /*
     * Groups of equal scatter, two-sided 5 %, power 0.80: n of each group by d.
     * Source: J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, 1988, table 2.4.1;
     * d = 0.50 and 0.80 also in A power primer, Psychological Bulletin 112, 1992, table 2. All from memory.
     */
    @Test
    void cohensGroupSizeMatchesPublished() {
        assertThat(alike(0.2)).isCloseTo(393, within(1));
        assertThat(alike(0.5)).isEqualTo(64);
        assertThat(alike(0.8)).isEqualTo(26);
        assertThat(alike(1.0)).isEqualTo(17);
    }

    private static int alike(double d) {
        return new SampleSize(2, d, 1, SampleSize.POWER).findForAlikeScatter().orElseThrow();
    }

    /** Where scatters are not taken to be alike it takes a little more, and never fewer. */
    @Test
    void unlikeScatterTakesALittleMoreHolds() {
        for (double d : new double[] {0.5, 0.8, 1, 2, 4}) {
            int wanted = new SampleSize(2, d, 1, SampleSize.POWER).find().orElseThrow();
            assertThat(wanted).isBetween(alike(d), alike(d) + 2);
        }
    }

    /** Trials of the planned size find the planned difference as often as planned. */
    @Test
    void plannedPowerIsReachedHolds() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        int relays = new SampleSize(2, 5, 3, SampleSize.POWER).find().orElseThrow();
        long found =
                IntStream.range(0, 2000).filter(i -> isFound(relays, random)).count();
        System.out.println("re-lays " + relays + ", found " + found + " of 2000");
        assertThat(found / 2000.0).isBetween(SampleSize.POWER - LUCK, 0.95);
    }

    /** Scatter between re-lay means of 3 psi: of the lay alone such that three readings of 0.8 psi each make 3 with it. */
    private static boolean isFound(int relays, Random random) {
        double lay = Math.sqrt(9 - 0.64 / 3);
        List<Relay> all = new ArrayList<>(Trials.relays("A", relays, 40, lay, random));
        all.addAll(Trials.relays("B", relays, 45, lay, random));
        TrialResult result = TrialResult.of(Trials.stake(0), Trials.labels(2), all);
        return result.pairs().get(0).verdict() == Verdict.TOLD;
    }

    @Test
    void morePairsTakeMoreRelaysHold() {
        int last = 0;
        for (int kinds = 2; kinds <= 6; kinds++) {
            int wanted = new SampleSize(kinds, 5, 3, SampleSize.POWER).find().orElseThrow();
            assertThat(wanted).isGreaterThanOrEqualTo(last);
            last = wanted;
        }
    }

    @Test
    void oneKindOrNoDifferenceIsRefused() {
        assertThatThrownBy(() -> new SampleSize(1, 5, 3, 0.8)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new SampleSize(2, 0, 3, 0.8)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new SampleSize(2, 5, 3, 1)).isInstanceOf(InvalidInput.class);
    }
}
