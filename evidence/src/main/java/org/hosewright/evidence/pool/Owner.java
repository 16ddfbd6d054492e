package org.hosewright.evidence.pool;

/** Where an equation comes from.
 *
 * @param kind what it comes from
 * @param index which night, or place of the unknown that links; 0 where there is one only
 */
record Owner(Kind kind, int index) {
    static final Owner BELIEF = new Owner(Kind.BELIEF, 0);

    /** What an equation comes from. */
    enum Kind {
        /** What was believed of hose before any night. */
        BELIEF,
        /** A night: its readings, and how far a night may lie off. */
        NIGHT,
        /** What carries a night's word to a number: how far a batch may lie off its type, how far an instrument may be off, how fast
         * hose may change.
         */
        LINK
    }

    static Owner night(int index) {
        return new Owner(Kind.NIGHT, index);
    }

    static Owner link(int unknown) {
        return new Owner(Kind.LINK, unknown);
    }
}
