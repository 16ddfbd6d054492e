package org.hosewright.evidence.joint;

import org.hosewright.hydraulics.quantity.Constants;

/** What is believed before any reading, each number once; every result names those it rests on. */
public final class Priors {
    /** Hose whose loss is from a book, a maker or an estimate: deviation of the logarithm. @source judgement: wide */
    public static final double BOOK_HOSE = 0.35;

    /** Hose that was measured before: deviation of the logarithm, wide still, since a night stands on its own. */
    public static final double MEASURED_HOSE = 0.25;

    /** Piping: a half-normal of this width [Pa s2/m6], 6 psi at 100 gpm. @source judgement: wide */
    public static final double PIPING = 6 * Constants.US_POINT_LOSS;

    /** Flow factor of a smooth bore that was gauged for the night: deviation of the logarithm. */
    public static final double GAUGED_BORE = 0.015;

    /** Flow factor of any other smooth bore; 1/64 in on 7/8 in is 3.6 % of flow. */
    public static final double UNGAUGED_BORE = 0.04;

    /** Flow factor of a fog tip: makers rate low. */
    public static final double FOG_CENTRE = 1.05;

    /** Deviation of the logarithm of a fog tip's flow factor: 0.07 on 1.05. */
    public static final double FOG = 0.07 / 1.05;

    /** The share of the tip's pressure that a side tap of unknown diameter misses: centre. */
    public static final double TAP_CENTRE = 0.15;

    /** The share of the tip's pressure that a side tap of unknown diameter misses: deviation. */
    public static final double TAP = 0.12;

    /** Fixed error of a gauge that nobody described, as a share of its range. */
    public static final double GAUGE_SHARE = 0.01;

    /** Range of a pump gauge that nobody described [Pa], 400 psi. */
    public static final double PUMP_RANGE = 400 * Constants.PSI_PA;

    /** Range of a tip gauge that nobody described [Pa], 200 psi. */
    public static final double TIP_RANGE = 200 * Constants.PSI_PA;

    /** Fixed error of a meter that nobody described, as a share of the reading. */
    public static final double METER_SHARE = 0.05;

    /** Scatter that an instrument begins with, as a share of its fixed error; half the least count comes on top. */
    public static final double SCATTER_SHARE = 0.25;

    /** Least count of a gauge that nobody described, as a share of its range. */
    public static final double LEAST_COUNT_SHARE = 1.0 / 400;

    /** How many readings the belief in the scatter that one begins with is worth: 4 make it good within a factor of 2.
     *
     * <p>The multiple's square has a scaled inverse chi-square prior with this many degrees of freedom.
     */
    public static final double SCATTER_WORTH = 4;

    private Priors() {}
}
