package org.hosewright.ground.walk;

/** The steps that a walk is worked through in: a fix, or a moment without one, at each.
 *
 * <p>A moment without a fix, in a gap or where a fix was set aside, has an infinite sigma.
 */
final class Course {
    /** No receiver is better than this on one axis [m]. */
    static final double LEAST_SIGMA_m = 0.3;

    final double[] time_s;
    final double[] east_m;
    final double[] north_m;
    /** Standard deviation of the fix on one axis [m]. */
    final double[] sigma_m;
    /** Index of the fix in the track; the last one before, where there is none. */
    final int[] fix;
    /** True where the person stood still from the step before to this one. */
    final boolean[] standing;

    Course(int size) {
        time_s = new double[size];
        east_m = new double[size];
        north_m = new double[size];
        sigma_m = new double[size];
        fix = new int[size];
        standing = new boolean[size];
    }

    int size() {
        return time_s.length;
    }

    boolean hasFix(int step) {
        return sigma_m[step] < Double.POSITIVE_INFINITY;
    }

    Transition into(int step, Model model) {
        return model.over(time_s[step] - time_s[step - 1], standing[step]);
    }
}
