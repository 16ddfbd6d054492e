package org.hosewright.evidence.pool;

import java.util.List;

/** All nights together: what they say of hose, how much batches and nights differ, and what they share.
 *
 * @param year of the last night; every number is as of then
 * @param types each type that was flown
 * @param terms instruments, discharges and nozzles that the nights tell something of
 * @param batchSpread how much batches of a type differ: of the logarithm of the loss
 * @param nightSpread how much a batch differs from night to night: of the logarithm of the loss
 * @param nights how many nights count
 * @param leftOut nights that say nothing
 */
public record Pool(
        double year,
        List<TypeLoss> types,
        List<PooledTerm> terms,
        Told batchSpread,
        Told nightSpread,
        int nights,
        List<PoolNight> leftOut) {
    public Pool {
        types = List.copyOf(types);
        terms = List.copyOf(terms);
        leftOut = List.copyOf(leftOut);
    }

    /** Weighs nights together. Types and batches that no night flew are left out.
     *
     * @param types by id, those of every batch
     * @param batches every batch that a night flew
     * @param nights in any order
     */
    public static Pool of(List<HoseType> types, List<Batch> batches, List<PoolNight> nights) {
        List<PoolNight> telling =
                nights.stream().filter(night -> night.worth().isPresent()).toList();
        List<PoolNight> silent =
                nights.stream().filter(night -> night.worth().isEmpty()).toList();
        if (telling.isEmpty()) {
            Told none = new Told(0, 0);
            return new Pool(0, List.of(), List.of(), none, none, 0, silent);
        }
        return new Pooling(new Hierarchy(types, batches, telling)).pool(silent);
    }
}
