package org.hosewright.evidence.pool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Intervals of many nights together mean what they say: with the truth drawn from the stated beliefs, 95 % of them hold it. */
class PoolCoverageTest {
    private static final long FIRST_SEED = 20_261_125;
    private static final double TWO_SIDED = 1.96;

    private final Map<String, int[]> counts = new TreeMap<>();

    @Test
    void intervalsOfSomePoolsHold() {
        check(40, 0.85, 1);
    }

    @Test
    @Tag("long")
    void intervalsOfFourThousandPoolsHold() {
        check(4000, 0.935, 0.965);
    }

    private void check(int pools, double least, double most) {
        System.out.println("first seed " + FIRST_SEED);
        for (long seed = FIRST_SEED; seed < FIRST_SEED + pools; seed++) {
            add(new ManyYears.Drawn(seed));
        }
        counts.forEach((what, count) -> System.out.println(what + ": " + count[0] + " of " + count[1]));
        assertThat(counts).hasSize(4);
        counts.forEach((what, count) ->
                assertThat((double) count[0] / count[1]).as(what).isBetween(least, most));
    }

    private void add(ManyYears.Drawn drawn) {
        TypeLoss told = drawn.years.type();
        told.loss().ifPresent(known -> count("type", known, drawn.typeLog));
        told.anotherBatch().ifPresent(known -> count("another batch", known, drawn.anotherLog));
        for (BatchLoss batch : told.batches()) {
            batch.loss().ifPresent(known -> count("batch", known, drawn.batchLogs.get(batch.batch())));
        }
        YearDrift drift = told.drift();
        if (drift.standing() != YearDrift.Standing.CANNOT_TELL) {
            count("drift", Math.abs(drift.perYear() - drawn.drift) <= TWO_SIDED * drift.standardError());
        }
    }

    private void count(String what, Known<HoseLoss> known, double log) {
        double truth = ManyYears.TYPE.loss().r() * Math.exp(log);
        count(what, Math.abs(known.value().r() - truth) <= TWO_SIDED * known.standardErrorSi());
    }

    private void count(String what, boolean held) {
        int[] count = counts.computeIfAbsent(what, any -> new int[2]);
        count[0] += held ? 1 : 0;
        count[1]++;
    }
}
