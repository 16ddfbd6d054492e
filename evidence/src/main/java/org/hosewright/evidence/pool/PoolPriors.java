package org.hosewright.evidence.pool;

/** What is believed of many nights before any of them, each number once; every result names those it rests on. */
public final class PoolPriors {
    /** Batches of a type differ: half-normal, of the logarithm of the loss. @source judgement: 5 % */
    public static final double BATCHES = 0.05;

    /** The same batch differs from night to night (water, kinks, how it lies): half-normal. @source judgement: 2 % */
    public static final double NIGHTS = 0.02;

    /** Change of a type's loss in a year: deviation of the logarithm. @source judgement: 2 % */
    public static final double DRIFT = 0.02;

    private PoolPriors() {}
}
