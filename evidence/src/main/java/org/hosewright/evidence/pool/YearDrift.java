package org.hosewright.evidence.pool;

/** How a type's loss changes from year to year, told by batches that were flown again only.
 *
 * @param standing whether a drift is shown
 * @param perYear change of the loss's logarithm in a year; what was believed beforehand where it cannot be told
 * @param standardError its standard error
 */
public record YearDrift(Standing standing, double perYear, double standardError) {
    private static final double TWO_SIDED = 1.96;

    /** Whether a drift is shown. */
    public enum Standing {
        /** The interval leaves out 0. */
        SHOWN,
        /** The interval is narrow and holds 0. */
        NOT_SHOWN,
        /** A change in time and a difference between batches or nights look the same to these nights. */
        CANNOT_TELL
    }

    /** The drift as batches flown again tell it.
     *
     * @param told from within batches alone
     */
    static YearDrift of(Told told) {
        if (told.deviation() > PoolPriors.DRIFT / 2) {
            return new YearDrift(Standing.CANNOT_TELL, told.value(), told.deviation());
        }
        boolean shown = Math.abs(told.value()) > TWO_SIDED * told.deviation();
        return new YearDrift(shown ? Standing.SHOWN : Standing.NOT_SHOWN, told.value(), told.deviation());
    }
}
