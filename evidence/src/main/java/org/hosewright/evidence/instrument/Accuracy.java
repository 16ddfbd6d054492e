package org.hosewright.evidence.instrument;

import org.hosewright.hydraulics.quantity.Numbers;

/** One standard deviation of an instrument's fixed error over a night.
 *
 * @param share the size, as a share of its base (0.005 for half a percent); above 0
 * @param of the base
 */
public record Accuracy(double share, Of of) {
    /** What the share is taken of. */
    public enum Of {
        RANGE,
        READING
    }

    public Accuracy {
        Numbers.requirePositive("accuracy", share);
    }
}
