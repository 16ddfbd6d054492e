package org.hosewright.evidence.pool;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Unknown;
import org.hosewright.evidence.joint.Worth;
import org.hosewright.hydraulics.quantity.HoseLoss;

/** Batches of one type flown over years, each night telling a batch's loss so well. */
final class ManyYears {
    static final HoseType TYPE = new HoseType("attack-175", HoseLoss.ofUs(15.5), 0.35);

    final List<Batch> batches = new ArrayList<>();
    final List<PoolNight> nights = new ArrayList<>();

    ManyYears batch(String id, int made) {
        batches.add(new Batch(id, TYPE.id(), OptionalDouble.of(made)));
        return this;
    }

    /** Adds a night.
     *
     * @param log natural logarithm of the loss over the type's belief, as the night found it
     */
    ManyYears night(double year, String batch, double log, double deviation) {
        Unknown unknown = new Unknown(Role.HOSE, batch, TYPE.loss().r(), TYPE.deviation());
        Worth worth = Worth.of(unknown, log / TYPE.deviation(), deviation / TYPE.deviation());
        nights.add(new PoolNight("night " + (nights.size() + 1), year, worth, Map.of()));
        return this;
    }

    Hierarchy hierarchy() {
        return new Hierarchy(List.of(TYPE), batches, nights);
    }

    Pool pool() {
        return Pool.of(List.of(TYPE), batches, nights);
    }

    TypeLoss type() {
        return pool().types().get(0);
    }

    /** Years drawn from what is believed beforehand, the truth kept beside them. */
    static final class Drawn {
        final ManyYears years = new ManyYears();
        final Map<String, Double> batchLogs = new LinkedHashMap<>();
        final double typeLog;
        final double anotherLog;
        final double drift;

        Drawn(long seed) {
            Random random = new Random(seed * 0x9E3779B97F4A7C15L);
            typeLog = TYPE.deviation() * random.nextGaussian();
            double apart = PoolPriors.BATCHES * Math.abs(random.nextGaussian());
            double nightly = PoolPriors.NIGHTS * Math.abs(random.nextGaussian());
            drift = PoolPriors.DRIFT * random.nextGaussian();
            int count = 2 + random.nextInt(4);
            double sum = 0;
            for (int i = 0; i < count; i++) {
                int made = 2010 + random.nextInt(10);
                years.batch("batch-" + i, made);
                sum += made;
            }
            for (Batch batch : years.batches) {
                double older = sum / count - batch.made().orElseThrow();
                batchLogs.put(batch.id(), typeLog + drift * older + apart * random.nextGaussian());
            }
            anotherLog = typeLog + apart * random.nextGaussian();
            fly(random, nightly);
        }

        /** Every batch once, then some again; the last night is in 2026. */
        private void fly(Random random, double nightly) {
            int more = random.nextInt(6);
            for (int i = 0; i < batchLogs.size() + more; i++) {
                String batch = "batch-" + (i < batchLogs.size() ? i : random.nextInt(batchLogs.size()));
                double year = i == 0 ? 2026 : 2020 + 6 * random.nextDouble();
                double deviation = 0.01 + 0.03 * random.nextDouble();
                double found = batchLogs.get(batch)
                        + drift * (year - 2026)
                        + nightly * random.nextGaussian()
                        + deviation * random.nextGaussian();
                years.night(year, batch, found, deviation);
            }
        }
    }
}
