package org.hosewright.evidence.fit;

import org.hosewright.hydraulics.error.NotConverged;

/** The damped Gauss-Newton method on a problem in blocks.
 *
 * @source K. Madsen, H. B. Nielsen, O. Tingleff, Methods for Non-Linear Least Squares Problems, 2nd edition, 2004, the
 *     control of the damping; D. Marquardt, 1963, the scaling by columns
 */
public final class LevenbergMarquardt {
    private static final int MOST_STEPS = 2000;
    /** The damping to begin with: bold, then, where that ran into a waste, careful. */
    private static final double[] BEGINNINGS = {1e-3, 1e2, 1e4};

    private static final double MOST_DAMPING = 1e16;

    private static final double MOST_RELIEF = 1e-2;
    private static final int MOST_POLISH = 50;

    /** Where rounding hides what is left to remove, as a share of the cost. */
    private static final double ROUNDING = 1e-10;

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
        double cost = 0;
        for (double beginning : BEGINNINGS) {
            Place end = walk(start, beginning);
            if (isNear(end.level)) {
                return polished(end.point, end.level);
            }
            cost = end.level.cost();
        }
        throw new NotConverged("The fit did not settle.", "cost " + cost);
    }

    private Place walk(Point start, double beginning) {
        Point here = start;
        Linear level = new Linear(problem, here);
        double[] scale = level.columnSquares();
        double damping = beginning;
        double growth = 2;
        for (int step = 0; step < MOST_STEPS && damping < MOST_DAMPING && !isNear(level); step++) {
            Triangle damped = level.damped(damping, scale);
            Point next = level.stepped(here, damped);
            double gain = (level.cost() - next.cost(problem)) / level.removable(damped);
            if (gain > 0) {
                here = next;
                level = new Linear(problem, here);
                widen(scale, level.columnSquares());
                double turn = 2 * gain - 1;
                damping *= Math.max(MOST_RELIEF, 1 - turn * turn * turn);
                growth = 2;
            } else {
                damping *= growth;
                growth *= 2;
            }
        }
        return new Place(here, level);
    }

    private record Place(Point point, Linear level) {}

    /** True where the cost itself can no longer show which of two points is better, or need not. */
    private boolean isNear(Linear level) {
        return level.removable(level.triangle()) <= Math.max(ROUNDING, share) * level.cost() + least;
    }

    /** Whole steps as long as they bring the slope nearer to level; the cost's own digits end before the unknowns' do. */
    private Minimum polished(Point from, Linear near) {
        Point here = from;
        Linear level = near;
        for (int step = 0; step < MOST_POLISH; step++) {
            double left = level.removable(level.triangle());
            if (left <= share * level.cost() + least) {
                break;
            }
            Point next = level.stepped(here, level.triangle());
            Linear there = new Linear(problem, next);
            if (!(there.removable(there.triangle()) < left)) {
                break;
            }
            here = next;
            level = there;
        }
        return new Minimum(problem, here, level);
    }

    private static void widen(double[] scale, double[] now) {
        for (int j = 0; j < scale.length; j++) {
            scale[j] = Math.max(scale[j], now[j]);
        }
    }

    /** A problem seen from a point, without moving. */
    public static Minimum at(Blocks problem, Point point) {
        return new Minimum(problem, point, new Linear(problem, point));
    }
}
