package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hosewright.evidence.pool.Batch;
import org.hosewright.evidence.pool.Pool;
import org.hosewright.evidence.pool.PoolNight;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The cost of many nights grows hardly faster than the readings. */
class GrowthTest {
    private static final long SEED = 20_261_125;
    private static final int RIGS = 20;
    private static final int HOSES_PER_RIG = 25;
    private static final int READINGS_PER_NIGHT = 6;

    /** Ten times the readings may cost so many times the time: linear growth, and as much again for memory and a busy machine. */
    private static final double MOST_RATIO = 20;

    /** Ten thousand readings over 500 hoses, the nights heard before [s]. */
    private static final double MOST_TIME_s = 5;

    @Test
    @Tag("long")
    void weighingTenThousandReadingsOverFiveHundredHosesHolds() {
        System.out.println("seed " + SEED);
        List<RigYears> rigs = rigs(10_000);
        time_s(rigs, 1);
        double hundred = time_s(rigs, 100);
        double thousand = time_s(rigs, 1_000);
        double tenThousand = time_s(rigs, 10_000);
        assertThat(tenThousand).isLessThan(MOST_TIME_s);
        assertThat(tenThousand / thousand).isLessThan(MOST_RATIO);
        assertThat(thousand / hundred).isLessThan(MOST_RATIO);
    }

    private static List<RigYears> rigs(int readings) {
        int nights = readings / READINGS_PER_NIGHT / RIGS + 1;
        long start = System.nanoTime();
        List<RigYears> rigs = IntStream.range(0, RIGS)
                .parallel()
                .mapToObj(rig -> new RigYears("rig-" + rig + "-", SEED + rig, HOSES_PER_RIG, nights))
                .toList();
        System.out.println("hearing " + RIGS * nights + " nights: " + (System.nanoTime() - start) / 1e9 + " s");
        return rigs;
    }

    /** The time that weighing so many readings takes, the shortest of three [s]. */
    private static double time_s(List<RigYears> rigs, int readings) {
        int nightsPerRig = readings / READINGS_PER_NIGHT / RIGS + 1;
        List<PoolNight> nights = new ArrayList<>();
        List<Batch> batches = new ArrayList<>();
        for (RigYears rig : rigs) {
            nights.addAll(rig.nights.subList(0, nightsPerRig));
            batches.addAll(rig.batches());
        }
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            long start = System.nanoTime();
            Pool pool = Pool.of(List.of(RigYears.TYPE), batches, nights);
            least = Math.min(least, (System.nanoTime() - start) / 1e9);
            assertThat(pool.types().get(0).loss()).isPresent();
        }
        System.out.println(
                nights.size() * READINGS_PER_NIGHT + " readings, " + nights.size() + " nights: " + least + " s");
        return least;
    }
}
