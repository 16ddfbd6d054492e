package org.hosewright.ground.walk;

/** The Kalman filter: forward through the steps of a walk.
 *
 * @source R. E. Kalman, A New Approach to Linear Filtering and Prediction Problems, 1960
 */
final class Filter {
    /** Values of a state's mean: position, velocity, wandering, east and north. */
    static final int MEAN = 6;

    /** How far the first fix may be off, in standard deviations: the start is known by its fix alone. */
    private static final double START_TIMES = 4;

    /** Standard deviations beyond which a fix does not belong to the walk: a spike. */
    private static final double SPIKE = 5;

    /** After so many spikes in a row the walk is where they say. */
    private static final int MOST_SPIKES = 5;

    private final Course course;
    private final Model model;
    /** Means and covariances, predicted and with the fix taken in; 6 values a step. */
    final double[] predicted;

    final double[] predictedCov;
    final double[] mean;
    final double[] cov;
    final boolean[] spike;
    private final Sym3 p = new Sym3();
    private final Sym3 next = new Sym3();
    private double logLikelihood;
    private int spikes;

    Filter(Course course, Model model) {
        this.course = course;
        this.model = model;
        int size = course.size();
        predicted = new double[MEAN * size];
        mean = new double[MEAN * size];
        predictedCov = new double[Sym3.SIZE * size];
        cov = new double[Sym3.SIZE * size];
        spike = new boolean[size];
    }

    /** Runs through the first so many steps; returns the logarithm of how well the model explains them. */
    double run(int steps) {
        start();
        for (int step = 1; step < steps; step++) {
            predict(step);
            update(step, true);
        }
        return logLikelihood;
    }

    private void start() {
        double wide_m = START_TIMES * course.sigma_m[0];
        p.p00 = wide_m * wide_m;
        p.p01 = 0;
        p.p02 = 0;
        p.p11 = model.speed_ms() * model.speed_ms();
        p.p12 = 0;
        p.p22 = 1;
        p.store(predictedCov, 0);
        predicted[0] = course.east_m[0];
        predicted[3] = course.north_m[0];
        logLikelihood = 0;
        spikes = 0;
        update(0, false);
    }

    private void predict(int step) {
        Transition to = course.into(step, model);
        to.predict(p, next);
        next.store(predictedCov, Sym3.SIZE * step);
        int at = MEAN * step;
        for (int axis = 0; axis < MEAN; axis += 3) {
            int before = at - MEAN + axis;
            predicted[at + axis] = mean[before] + to.c() * mean[before + 1];
            predicted[at + axis + 1] = to.a() * mean[before + 1];
            predicted[at + axis + 2] = to.e() * mean[before + 2];
        }
    }

    /** Takes the fix of a step in, where there is one that belongs. */
    private void update(int step, boolean counted) {
        int at = MEAN * step;
        p.load(predictedCov, Sym3.SIZE * step);
        System.arraycopy(predicted, at, mean, at, MEAN);
        if (course.hasFix(step)) {
            double h = course.sigma_m[step] * Math.sqrt(1 - Model.WHITE * Model.WHITE);
            double white_m = course.sigma_m[step] * Model.WHITE;
            double s = p.p00 + 2 * h * p.p02 + h * h * p.p22 + white_m * white_m;
            double east = course.east_m[step] - predicted[at] - h * predicted[at + 2];
            double north = course.north_m[step] - predicted[at + 3] - h * predicted[at + 5];
            double off = (east * east + north * north) / s;
            spike[step] = counted && off > SPIKE * SPIKE && spikes < MOST_SPIKES;
            spikes = spike[step] ? spikes + 1 : 0;
            if (!spike[step]) {
                take(at, h, s, east, north);
            }
            logLikelihood -= counted ? Math.log(s) + 0.5 * Math.min(off, SPIKE * SPIKE) : 0;
        }
        p.store(cov, Sym3.SIZE * step);
    }

    private void take(int at, double h, double s, double east, double north) {
        double r0 = p.p00 + h * p.p02;
        double r1 = p.p01 + h * p.p12;
        double r2 = p.p02 + h * p.p22;
        mean[at] += r0 / s * east;
        mean[at + 1] += r1 / s * east;
        mean[at + 2] += r2 / s * east;
        mean[at + 3] += r0 / s * north;
        mean[at + 4] += r1 / s * north;
        mean[at + 5] += r2 / s * north;
        p.p00 -= r0 * r0 / s;
        p.p01 -= r0 * r1 / s;
        p.p02 -= r0 * r2 / s;
        p.p11 -= r1 * r1 / s;
        p.p12 -= r1 * r2 / s;
        p.p22 -= r2 * r2 / s;
    }
}
