package org.hosewright.ground.walk;

import java.util.List;

/** Where a person stood still: moments between which the fixes speak for no movement rather than for a walk.
 *
 * <p>For the displacement over a window the density at zero after the fixes is compared with the one before them.
 *
 * @source J. M. Dickey, The weighted likelihood ratio, Annals of Mathematical Statistics 42, 1971
 */
final class Stops {
    /** So many times likelier standing than walking [1]. */
    private static final double ODDS = 60;

    private static final double[] WINDOWS_s = {128, 64, 32, 16, 8};

    private final Course course;
    private final List<Way> ways;
    private final Model model;
    private int count;

    Stops(Course course, List<Way> ways, Model model) {
        this.course = course;
        this.ways = ways;
        this.model = model;
    }

    /** Marks the steps of the course at which the person stood; returns how often that was. */
    int mark() {
        for (double window_s : WINDOWS_s) {
            int end = 0;
            for (int start = 0; start < course.size() - 1; start++) {
                while (end < course.size() - 1 && course.time_s[end] - course.time_s[start] < window_s) {
                    end++;
                }
                if (isWhole(start, end, window_s) && odds(start, end) > ODDS && odds(start, (start + end) / 2) > 1) {
                    stand(start, end);
                }
            }
        }
        for (int step = 1; step < course.size(); step++) {
            count += course.standing[step] && !course.standing[step - 1] ? 1 : 0;
        }
        return count;
    }

    private boolean isWhole(int start, int end, double window_s) {
        return course.time_s[end] - course.time_s[start] >= window_s;
    }

    private void stand(int start, int end) {
        for (int step = start + 1; step <= end; step++) {
            course.standing[step] = true;
        }
    }

    /** How much likelier it is that nobody moved between two steps than that somebody walked. */
    private double odds(int start, int end) {
        double t = model.turn_s();
        double dt_s = course.time_s[end] - course.time_s[start];
        double before = 2 * model.speed_ms() * model.speed_ms() * t * (dt_s - t * (1 - Math.exp(-dt_s / t)));
        double east = 0;
        double north = 0;
        double squares = 0;
        for (Way way : ways) {
            double x = way.east_m[end] - way.east_m[start];
            double y = way.north_m[end] - way.north_m[start];
            east += x;
            north += y;
            squares += x * x + y * y;
        }
        double share = 1.0 / ways.size();
        double mean = (east * east + north * north) * share * share;
        double after = Math.max(1e-6, (squares * share - mean) / 2);
        return before / after * Math.exp(-mean / (2 * after));
    }
}
