package org.hosewright.evidence.pool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.hosewright.evidence.pool.Disagreement.Cause;
import org.hosewright.evidence.pool.Disagreement.Seen;
import org.junit.jupiter.api.Test;

/** A night that disagrees with earlier ones: the night, the hose or the drift is named, or it is said that none can be. */
class DisagreementTest {
    private static final long SEED = 20_260_612;
    private static final double WELL = 0.03;

    /** Of two-hose nights without any change so few may be called different. */
    private static final double MOST_FALSE = 0.02;

    private static Seen seen(String hose, double change, double years) {
        return new Seen(hose, change, WELL, years);
    }

    @Test
    void agreementSaysNothingHolds() {
        assertThat(Disagreement.find(List.of())).isEmpty();
        assertThat(Disagreement.find(List.of(seen("a", 0.04, 1), seen("b", -0.05, 1))))
                .isEmpty();
    }

    @Test
    void oneHoseAloneCannotTellItselfFromTheNightHolds() {
        Disagreement found = Disagreement.find(List.of(seen("a", 0.25, 0.1))).orElseThrow();
        assertThat(found.told()).isFalse();
        assertThat(List.of(found.cause())).containsAnyOf(Cause.NIGHT, Cause.HOSE);
        assertThat(found.also()).containsAnyOf(Cause.NIGHT, Cause.HOSE).doesNotContain(Cause.DRIFT);
    }

    @Test
    void allHosesOffAlikeIsTheNightHolds() {
        Disagreement found = Disagreement.find(List.of(seen("a", 0.22, 0.1), seen("b", 0.2, 0.1), seen("c", 0.23, 0.1)))
                .orElseThrow();
        assertThat(found.cause()).isEqualTo(Cause.NIGHT);
        assertThat(found.told()).isTrue();
        assertThat(found.also()).isEmpty();
    }

    @Test
    void oneHoseOffBesideOthersIsTheHoseHolds() {
        Disagreement found = Disagreement.find(List.of(seen("a", 0.01, 1), seen("b", 0.28, 1), seen("c", -0.02, 1)))
                .orElseThrow();
        assertThat(found.cause()).isEqualTo(Cause.HOSE);
        assertThat(found.hose().hose()).isEqualTo("b");
        assertThat(found.told()).isTrue();
    }

    @Test
    void olderMeasurementsOffMoreIsADriftHolds() {
        Disagreement found = Disagreement.find(
                        List.of(seen("a", 0.03, 1), seen("b", 0.16, 5), seen("c", 0.31, 10), seen("d", 0.01, 0.5)))
                .orElseThrow();
        assertThat(found.cause()).isEqualTo(Cause.DRIFT);
        assertThat(found.told()).isTrue();
    }

    @Test
    void chanceIsSeldomCalledADifferenceHolds() {
        Random random = new Random(SEED);
        int called = 0;
        int nights = 4000;
        double each = Math.sqrt(WELL * WELL + PoolPriors.NIGHTS * PoolPriors.NIGHTS);
        for (int i = 0; i < nights; i++) {
            List<Seen> seen =
                    List.of(seen("a", each * random.nextGaussian(), 1), seen("b", each * random.nextGaussian(), 1));
            called += Disagreement.find(seen).isPresent() ? 1 : 0;
        }
        System.out.println("seed " + SEED + ": " + called + " of " + nights + " sound nights called different");
        assertThat(called).isLessThan((int) (MOST_FALSE * nights));
    }
}
