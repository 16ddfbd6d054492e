package org.hosewright.evidence.trial;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** What hangs on a trial: what is measured, over how much hose, and from where on a difference changes a decision.
 *
 * @param measure what the kinds are compared by
 * @param over length of hose in the trial
 * @param longest the longest stretch that the company would lay with it
 * @param matters the least difference, at the longest stretch, that changes what the company would do, in SI; above 0
 * @param resolution the finest step that the measured value is read in, in SI; 0 where it is read without steps
 */
public record Stake(Measure measure, Length over, Length longest, double matters, double resolution) {
    /** A difference of pressure at the longest stretch that a decision turns on [psi]. @source judgement; the company's own may be given */
    public static final double MATTERS_PSI = 10;

    /** A difference of flow that a decision turns on [gpm]. @source judgement; the company's own may be given */
    public static final double MATTERS_GPM = 10;

    public Stake {
        Numbers.requirePositive("length of hose in the trial", over.metres());
        Numbers.requirePositive("difference that matters", matters);
        Numbers.requireNotNegative("step of reading", resolution);
        if (longest.metres() < over.metres() * (1 - 1e-9)) {
            throw new InvalidInput(
                    "longest stretch",
                    Numbers.plain(longest.metres()) + " m",
                    "at least the length in the trial, " + Numbers.plain(over.metres()) + " m",
                    "");
        }
    }

    /** The difference that matters as the trial would see it: loss grows with length, a nozzle's flow does not. */
    public double mattersHere() {
        return measure == Measure.LOSS ? matters * over.metres() / longest.metres() : matters;
    }

    /** Variance of a mean from the steps it was read in, which more re-lays may not take away: evenly spread over one step. */
    double stepVariance() {
        return resolution * resolution / 12;
    }
}
