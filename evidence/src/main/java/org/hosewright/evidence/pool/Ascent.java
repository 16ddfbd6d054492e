package org.hosewright.evidence.pool;

import java.util.function.ToDoubleFunction;

/** The way up a smooth hill of few dimensions: steps along each axis, halved where none leads upward. */
final class Ascent {
    private static final int MOST = 2000;

    private final ToDoubleFunction<double[]> height;
    private final double[] here;
    private double top;

    private Ascent(ToDoubleFunction<double[]> height, double[] start) {
        this.height = height;
        here = start.clone();
        top = height.applyAsDouble(here);
    }

    /** The top near a start.
     *
     * @param step the first step
     * @param still the step that is too small to matter
     */
    static double[] top(ToDoubleFunction<double[]> height, double[] start, double step, double still) {
        Ascent ascent = new Ascent(height, start);
        double now = step;
        for (int i = 0; i < MOST && now > still; i++) {
            now = ascent.stride(now) ? now * 1.3 : now / 2.3;
        }
        return ascent.here;
    }

    private boolean stride(double step) {
        boolean moved = false;
        for (int axis = 0; axis < here.length; axis++) {
            moved |= tried(axis, step) || tried(axis, -step);
        }
        return moved;
    }

    private boolean tried(int axis, double step) {
        double before = here[axis];
        here[axis] = before + step;
        double there = height.applyAsDouble(here.clone());
        if (there > top) {
            top = there;
            return true;
        }
        here[axis] = before;
        return false;
    }
}
