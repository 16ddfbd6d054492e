package org.hosewright.evidence.joint;

import org.hosewright.evidence.fit.LevenbergMarquardt;
import org.hosewright.evidence.fit.Minimum;
import org.hosewright.evidence.fit.Point;

/** All readings weighed together, with the scatter that they show.
 *
 * @param joint what was weighed, with the scatter found
 * @param minimum the most likely unknowns
 * @param freedom how many readings' worth each scatter is known by, what was believed beforehand included
 */
public record Fit(Joint joint, Minimum minimum, Scatter freedom) {
    /** What may be left to remove of the cost, which is twice a log-likelihood. */
    private static final double TOLERANCE = 1e-9;

    private static final int ROUNDS = 25;
    private static final double STEADY = 0.01;

    /** Weighs, and finds the scatter too. */
    public static Fit of(Joint joint, Point start) {
        Joint now = joint;
        Minimum minimum = minimise(now, start);
        Tally tally = new Tally(now, minimum);
        for (int round = 0; round < ROUNDS; round++) {
            Scatter next = tally.scatter();
            double moved = next.apart(now.scatter());
            now = now.with(next);
            minimum = minimise(now, minimum.point());
            if (moved < STEADY) {
                break;
            }
            tally = new Tally(now, minimum);
        }
        return new Fit(now, minimum, tally.freedom());
    }

    /** Weighs with the scatter as it stands. */
    public static Minimum minimise(Joint joint, Point start) {
        return new LevenbergMarquardt(joint.blocks(), 0, TOLERANCE).solve(start);
    }

    /** Logarithm of how well the readings are explained, whatever the unknowns, up to what all explanations share. */
    public double evidence() {
        return evidence(joint, minimum);
    }

    static double evidence(Joint joint, Minimum minimum) {
        Scatter scatter = joint.scatter();
        return logPrior(scatter.pump())
                + logPrior(scatter.tip())
                + logPrior(scatter.flow())
                - minimum.cost() / 2
                - joint.logDeviations()
                - minimum.logDeterminant() / 2;
    }

    /** The scaled inverse chi-square prior of the square of a multiple, by the multiple's logarithm. */
    private static double logPrior(double multiple) {
        return -Priors.SCATTER_WORTH * (Math.log(multiple) + 1 / (2 * multiple * multiple));
    }
}
