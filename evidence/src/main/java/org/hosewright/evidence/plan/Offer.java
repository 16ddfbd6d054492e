package org.hosewright.evidence.plan;

/** One reading that could be taken, as the search sees it: what it tells, on which lay, and what it costs. */
final class Offer {
    private final double[][] rows;
    private final int lay;
    private final boolean once;
    private final double seconds;
    private final double water_m3;

    /** Makes an offer.
     *
     * @param rows what it adds to the information; the offer's own from here on
     * @param lay which lay it is taken on
     * @param once whether taking it twice is pointless
     * @param seconds time it takes, the laying apart
     * @param water_m3 water it takes, the filling of the hose apart
     */
    Offer(double[][] rows, int lay, boolean once, double seconds, double water_m3) {
        this.rows = rows;
        this.lay = lay;
        this.once = once;
        this.seconds = seconds;
        this.water_m3 = water_m3;
    }

    double[][] rows() {
        return rows;
    }

    int lay() {
        return lay;
    }

    boolean once() {
        return once;
    }

    double seconds() {
        return seconds;
    }

    double water_m3() {
        return water_m3;
    }
}
