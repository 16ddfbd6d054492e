package org.hosewright.ground.walk;

/** Heights with the scatter of single ones taken out. */
final class Levelled {
    /** Fixes to each side, fewer at the ends: some ten seconds, ten paces. */
    private static final int SIDE = 4;

    private Levelled() {}

    /** The mean of a height and its neighbours', as many on one side as on the other.
     *
     * @param recorded false where the heights were drawn and are not to be changed
     */
    static double mean(double[] heights, int at, boolean recorded) {
        int side = recorded ? Math.min(SIDE, Math.min(at, heights.length - 1 - at)) : 0;
        double sum = 0;
        for (int i = at - side; i <= at + side; i++) {
            sum += heights[i];
        }
        return sum / (2 * side + 1);
    }
}
