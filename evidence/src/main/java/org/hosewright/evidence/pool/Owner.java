package org.hosewright.evidence.pool;

/** Where an equation comes from.
 *
 * @param kind what it comes from
 * @param index which night or batch; 0 where there is one only
 */
record Owner(Kind kind, int index) {
    static final Owner BELIEF = new Owner(Kind.BELIEF, 0);

    /** What an equation comes from. */
    enum Kind {
        /** What was believed before any night. */
        BELIEF,
        /** A night: its readings, and how far a night may lie off. */
        NIGHT,
        /** A batch: how far it may lie off its type. */
        BATCH
    }

    static Owner night(int index) {
        return new Owner(Kind.NIGHT, index);
    }

    static Owner batch(int index) {
        return new Owner(Kind.BATCH, index);
    }
}
