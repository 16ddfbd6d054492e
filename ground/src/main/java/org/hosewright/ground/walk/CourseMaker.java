package org.hosewright.ground.walk;

import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Track;

/** Lays the kept fixes of a track out as steps, with moments in between where the fixes are far apart. */
final class CourseMaker {
    /** The longest step without a moment in between [s]: some three paces. */
    private static final double STEP_s = 2;

    /** More moments in between are never put in. */
    private static final int MOST_BETWEEN = 20_000;

    private final Track track;
    private final LocalPlane plane;
    private final Kept kept;
    private final double accuracy_m;
    private final double step_s;

    /** Lays out a track.
     *
     * @param accuracy_m radius that is taken where a fix states none [m]
     */
    CourseMaker(Track track, LocalPlane plane, Kept kept, double accuracy_m) {
        this.track = track;
        this.plane = plane;
        this.kept = kept;
        this.accuracy_m = accuracy_m;
        double lasts_s = kept.seconds().get(kept.seconds().size() - 1);
        this.step_s = Math.max(STEP_s, lasts_s / MOST_BETWEEN);
    }

    Course make() {
        int count = kept.index().size();
        int size = 1;
        for (int i = 1; i < count; i++) {
            size += parts(i);
        }
        Course course = new Course(size);
        fix(course, 0, 0);
        int step = 0;
        for (int i = 1; i < count; i++) {
            int parts = parts(i);
            for (int part = 1; part < parts; part++) {
                between(course, step + part, i, (double) part / parts);
            }
            step += parts;
            fix(course, step, i);
        }
        return course;
    }

    private int parts(int i) {
        double dt_s = kept.seconds().get(i) - kept.seconds().get(i - 1);
        return (int) Math.max(1, Math.ceil(dt_s / step_s - 1e-9));
    }

    private void fix(Course course, int step, int i) {
        Fix fix = track.fixes().get(kept.index().get(i));
        LocalPlane.Point point = plane.point(fix.position());
        course.time_s[step] = kept.seconds().get(i);
        course.east_m[step] = point.east_m();
        course.north_m[step] = point.north_m();
        double radius_m = fix.accuracy().map(radius -> radius.metres()).orElse(accuracy_m);
        course.sigma_m[step] = Math.max(Course.LEAST_SIGMA_m, radius_m * Model.AXIS_OF_RADIUS);
        course.fix[step] = kept.index().get(i);
    }

    private void between(Course course, int step, int i, double share) {
        double before_s = kept.seconds().get(i - 1);
        course.time_s[step] = before_s + share * (kept.seconds().get(i) - before_s);
        course.sigma_m[step] = Double.POSITIVE_INFINITY;
        course.fix[step] = kept.index().get(i - 1);
    }
}
