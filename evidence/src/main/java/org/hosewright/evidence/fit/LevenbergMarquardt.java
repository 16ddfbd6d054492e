package org.hosewright.evidence.fit;

import org.hosewright.hydraulics.error.NotConverged;

/** The damped Gauss-Newton method on a problem in blocks.
 *
 * @source K. Madsen, H. B. Nielsen, O. Tingleff, Methods for Non-Linear Least Squares Problems, 2nd edition, 2004, the
 *     control of the damping; D. Marquardt, 1963, the scaling by columns
 */
public final class LevenbergMarquardt {
    private static final int MOST_STEPS = 2000;
    private static final double FIRST_DAMPING = 1e-3;
    private static final double MOST_DAMPING = 1e16;

    /** Where rounding hides what is left to remove, as a share of the cost. */
    private static final double ROUNDING = 1e-9;

    private final Blocks problem;
    private final double share;
    private final double least;

    /** Sets the method up.
     *
     * @param problem what is minimised
     * @param share it ends when no more than this share of the cost can be removed
     * @param least or when no more than this can be removed
     */
    public LevenbergMarquardt(Blocks problem, double share, double least) {
        this.problem = problem;
        this.share = share;
        this.least = least;
    }

    /** The least cost near a start.
     *
     * @throws NotConverged no step lowers the cost although the slope is not level
     */
    public Minimum solve(Point start) {
        Point here = start;
        double damping = FIRST_DAMPING;
        double growth = 2;
        Linear level = new Linear(problem, here);
        for (int step = 0; step < MOST_STEPS && damping < MOST_DAMPING; step++) {
            if (level.removable(level.triangle()) <= share * level.cost() + least) {
                return new Minimum(problem, here, level);
            }
            Triangle damped = level.damped(damping);
            Point next = level.stepped(here, damped);
            double gain = (level.cost() - next.cost(problem)) / level.removable(damped);
            if (gain > 0) {
                here = next;
                level = new Linear(problem, here);
                double turn = 2 * gain - 1;
                damping *= Math.max(1e-2, 1 - turn * turn * turn);
                growth = 2;
            } else {
                damping *= growth;
                growth *= 2;
            }
        }
        if (level.removable(level.triangle()) <= ROUNDING * level.cost()) {
            return new Minimum(problem, here, level);
        }
        throw new NotConverged("The fit did not settle.", "cost " + level.cost());
    }

    /** A problem seen from a point, without moving. */
    public static Minimum at(Blocks problem, Point point) {
        return new Minimum(problem, point, new Linear(problem, point));
    }
}
