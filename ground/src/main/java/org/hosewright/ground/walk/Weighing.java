package org.hosewright.ground.walk;

import java.util.ArrayList;
import java.util.List;

/** How well each model explains a walk, all held equally likely before. */
final class Weighing {
    /** Steps that are enough to tell the models apart. */
    private static final int MOST_STEPS = 1200;

    private final List<Model> models = Model.listAll();
    private final double[] weights;

    Weighing(Course course) {
        int steps = Math.min(course.size(), MOST_STEPS);
        double[] logs = new double[models.size()];
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logs.length; i++) {
            logs[i] = new Filter(course, models.get(i)).run(steps);
            best = Math.max(best, logs[i]);
        }
        weights = new double[logs.length];
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            weights[i] = Math.exp(logs[i] - best);
            sum += weights[i];
        }
        for (int i = 0; i < logs.length; i++) {
            weights[i] /= sum;
        }
    }

    /** The model that explains it best. */
    Model best() {
        int best = 0;
        for (int i = 1; i < weights.length; i++) {
            best = weights[i] > weights[best] ? i : best;
        }
        return models.get(best);
    }

    /** So many models, each as often as its weight says, in a fixed order. */
    List<Model> share(int count) {
        List<Model> shared = new ArrayList<>();
        int at = 0;
        double sum = weights[0];
        for (int k = 0; k < count; k++) {
            double level = (k + 0.5) / count;
            while (sum < level && at < weights.length - 1) {
                at++;
                sum += weights[at];
            }
            shared.add(models.get(at));
        }
        return shared;
    }
}
