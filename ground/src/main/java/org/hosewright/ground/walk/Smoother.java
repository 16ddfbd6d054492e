package org.hosewright.ground.walk;

import java.util.SplittableRandom;

/** The Rauch-Tung-Striebel smoother: backward through the steps of a walk, once for the way itself and as often as
 * wanted for a way that the fixes leave possible.
 *
 * @source H. E. Rauch, F. Tung, C. T. Striebel, Maximum Likelihood Estimates of Linear Dynamic Systems, 1965; drawing:
 *     S. Fruehwirth-Schnatter, Data Augmentation and Dynamic Linear Models, 1994
 */
final class Smoother {
    private static final int GAIN = 9;

    private final Filter filter;
    private final int size;
    /** Gain of every step but the last, row by row. */
    private final double[] gains;
    /** Cholesky factor of what is left unknown at every step when the next one is known. */
    private final double[] roots;

    Smoother(Course course, Model model) {
        this.size = course.size();
        filter = new Filter(course, model);
        filter.run(size);
        gains = new double[GAIN * size];
        roots = new double[Sym3.SIZE * size];
        Sym3 p = new Sym3();
        Sym3 next = new Sym3();
        Sym3 work = new Sym3();
        double[] gain = new double[GAIN];
        for (int step = 0; step < size - 1; step++) {
            p.load(filter.cov, Sym3.SIZE * step);
            next.load(filter.predictedCov, Sym3.SIZE * (step + 1));
            work.invert(next);
            course.into(step + 1, model).gain(p, work, gain);
            System.arraycopy(gain, 0, gains, GAIN * step, GAIN);
            work.leftAfter(p, next, gain);
            work.root();
            work.store(roots, Sym3.SIZE * step);
        }
        p.load(filter.cov, Sym3.SIZE * (size - 1));
        p.root();
        p.store(roots, Sym3.SIZE * (size - 1));
    }

    Filter filter() {
        return filter;
    }

    /** The likeliest way. */
    Way way() {
        return back(null);
    }

    /** A way that the fixes leave possible, each as likely as it is. */
    Way draw(SplittableRandom random) {
        return back(random);
    }

    private Way back(@org.jspecify.annotations.Nullable SplittableRandom random) {
        double[] east_m = new double[size];
        double[] north_m = new double[size];
        double[] east = new double[3];
        double[] north = new double[3];
        for (int step = size - 1; step >= 0; step--) {
            boolean last = step == size - 1;
            one(step, 0, last, east);
            one(step, 3, last, north);
            if (random != null) {
                stir(step, random, east);
                stir(step, random, north);
            }
            east_m[step] = east[0];
            north_m[step] = north[0];
        }
        return new Way(east_m, north_m);
    }

    /** One axis of a state, given the next one's in the same place. */
    private void one(int step, int axis, boolean last, double[] state) {
        int at = Filter.MEAN * step + axis;
        if (last) {
            System.arraycopy(filter.mean, at, state, 0, 3);
            return;
        }
        int next = at + Filter.MEAN;
        double d0 = state[0] - filter.predicted[next];
        double d1 = state[1] - filter.predicted[next + 1];
        double d2 = state[2] - filter.predicted[next + 2];
        int g = GAIN * step;
        for (int i = 0; i < 3; i++) {
            state[i] =
                    filter.mean[at + i] + gains[g + 3 * i] * d0 + gains[g + 3 * i + 1] * d1 + gains[g + 3 * i + 2] * d2;
        }
    }

    private void stir(int step, SplittableRandom random, double[] state) {
        int at = Sym3.SIZE * step;
        double x = random.nextGaussian();
        double y = random.nextGaussian();
        double z = random.nextGaussian();
        state[0] += roots[at] * x;
        state[1] += roots[at + 1] * x + roots[at + 3] * y;
        state[2] += roots[at + 2] * x + roots[at + 4] * y + roots[at + 5] * z;
    }
}
