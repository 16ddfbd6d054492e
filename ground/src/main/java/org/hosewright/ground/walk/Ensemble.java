package org.hosewright.ground.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Ways that the fixes leave possible, each as likely as it is. */
final class Ensemble {
    /** The same walk always gives the same numbers. */
    private static final long SEED = 20_260_512;

    private static final int FEWEST = 16;
    private static final int MOST = 64;

    /** Points of all ways together. */
    private static final int POINTS = 200_000;

    private final List<Way> ways = new ArrayList<>();
    private final Smoother best;

    Ensemble(Course course, Weighing weighing) {
        best = new Smoother(course, weighing.best());
        int count = Math.max(FEWEST, Math.min(MOST, POINTS / course.size()));
        SplittableRandom random = new SplittableRandom(SEED);
        Model made = weighing.best();
        Smoother smoother = best;
        for (Model model : weighing.share(count)) {
            if (!model.equals(made)) {
                smoother = model.equals(weighing.best()) ? best : new Smoother(course, model);
                made = model;
            }
            ways.add(smoother.draw(random));
        }
    }

    List<Way> ways() {
        return ways;
    }

    Smoother best() {
        return best;
    }
}
